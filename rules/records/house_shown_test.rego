package greysill.records.house_shown_test

import rego.v2

import data.greysill.records.house_shown

good := {"subject": "good", "shows_house": true}

test_pass_drawn if {
	house_shown.proved == {"good"} with input as {"plan": [good]}
}

test_fail_not_drawn if {
	house_shown.proved == {"good"} with input as {"plan": [good, {"subject": "bad", "shows_house": false}]}
}

test_not_shown_shows_house if {
	house_shown.proved == {"good"} with input as {"plan": [good, {"subject": "unknown"}]}
}
