package greysill.records.water_service_shown_test

import rego.v2

import data.greysill.records.water_service_shown

good := {"subject": "good", "shows_water_service": true}

test_pass_drawn if {
	water_service_shown.proved == {"good"} with input as {"plan": [good]}
}

test_fail_not_drawn if {
	water_service_shown.proved == {"good"} with input as {"plan": [good, {"subject": "bad", "shows_water_service": false}]}
}

test_not_shown_shows_water_service if {
	water_service_shown.proved == {"good"} with input as {"plan": [good, {"subject": "unknown"}]}
}
