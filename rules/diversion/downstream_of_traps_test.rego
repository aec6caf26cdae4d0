package greysill.diversion.downstream_of_traps_test

import rego.v2

import data.greysill.diversion.downstream_of_traps

good := {"subject": "diverter-1", "downstream_of_traps": true}

test_pass_downstream_of_traps if {
	downstream_of_traps.proved == {"diverter-1"} with input as {"diverters": [good]}
}

test_fail_not_downstream_of_traps if {
	diverters := [good, {"subject": "diverter-2", "downstream_of_traps": false}]
	downstream_of_traps.proved == {"diverter-1"} with input as {"diverters": diverters}
}

test_not_shown_downstream_of_traps if {
	diverters := [good, {"subject": "diverter-2"}]
	downstream_of_traps.proved == {"diverter-1"} with input as {"diverters": diverters}
}
