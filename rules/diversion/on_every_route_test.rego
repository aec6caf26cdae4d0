package greysill.diversion.on_every_route_test

import rego.v2

import data.greysill.diversion.on_every_route

good := {"subject": "shower-1", "diverter_on_every_way": true}

test_pass_diverter_on_every_way if {
	on_every_route.proved == {"shower-1"} with input as {"routes": [good]}
}

test_fail_way_without_diverter if {
	routes := [good, {"subject": "washer-1", "diverter_on_every_way": false}]
	on_every_route.proved == {"shower-1"} with input as {"routes": routes}
}

test_not_shown_diverter_on_every_way if {
	routes := [good, {"subject": "washer-1"}]
	on_every_route.proved == {"shower-1"} with input as {"routes": routes}
}
