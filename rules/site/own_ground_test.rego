package greysill.site.own_ground_test

import rego.v2

import data.greysill.site.own_ground

good := {"subject": "good", "own_ground": true}

test_pass_on_its_own_ground if {
	own_ground.proved == {"good"} with input as {"parts": [good]}
}

test_fail_on_shared_ground if {
	own_ground.proved == {"good"} with input as {"parts": [good, {"subject": "bad", "own_ground": false}]}
}

test_not_shown_own_ground if {
	own_ground.proved == {"good"} with input as {"parts": [good, {"subject": "unknown"}]}
}
