package greysill.diversion.reachable_test

import rego.v2

import data.greysill.diversion.reachable

good := {"subject": "diverter-1", "accessible": true}

test_pass_reachable if {
	reachable.proved == {"diverter-1"} with input as {"diverters": [good]}
}

test_fail_not_reachable if {
	diverters := [good, {"subject": "diverter-2", "accessible": false}]
	reachable.proved == {"diverter-1"} with input as {"diverters": diverters}
}

test_not_shown_accessible if {
	diverters := [good, {"subject": "diverter-2"}]
	reachable.proved == {"diverter-1"} with input as {"diverters": diverters}
}
