package greysill.diversion.second_route_test

import rego.v2

import data.greysill.diversion.second_route

good := {"subject": "diverter-1", "second_route_reaches_sewer": true}

test_pass_second_route_to_the_sewer if {
	second_route.proved == {"diverter-1"} with input as {"diverters": [good]}
}

test_fail_second_route_elsewhere if {
	diverters := [good, {"subject": "diverter-2", "second_route_reaches_sewer": false}]
	second_route.proved == {"diverter-1"} with input as {"diverters": diverters}
}

test_not_shown_second_route_reaches_sewer if {
	diverters := [good, {"subject": "diverter-2"}]
	second_route.proved == {"diverter-1"} with input as {"diverters": diverters}
}
