package greysill.bed.inlet_inside_test

import rego.v2

import data.greysill.bed.inlet_inside

good := {"subject": "good", "inlet_inside": true}

test_pass_header_inside if {
	inlet_inside.proved == {"good"} with input as {"beds": [good]}
}

test_fail_header_outside if {
	beds := [good, {"subject": "bed-1", "inlet_inside": false}]
	inlet_inside.proved == {"good"} with input as {"beds": beds}
}

test_not_shown_header if {
	beds := [good, {"subject": "bed-1"}]
	inlet_inside.proved == {"good"} with input as {"beds": beds}
}
