package greysill.drains.fixtures_fall_test

import rego.v2

import data.greysill.drains.fixtures_fall

good := {"subject": "good", "falls": true}

test_pass_fixture_above if {
	fixtures_fall.proved == {"good"} with input as {"fixture_falls": [good]}
}

test_fail_fixture_below if {
	fixtures_fall.proved == {"good"} with input as {"fixture_falls": [good, {"subject": "bad", "falls": false}]}
}

test_not_shown_falls if {
	fixtures_fall.proved == {"good"} with input as {"fixture_falls": [good, {"subject": "unknown"}]}
}
