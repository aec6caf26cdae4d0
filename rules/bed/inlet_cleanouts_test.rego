package greysill.bed.inlet_cleanouts_test

import rego.v2

import data.greysill.bed.inlet_cleanouts

limits := {"inlet_cleanouts": {"value": 2}}

good := {"subject": "good", "inlet_cleanouts": 3}

test_pass_more if {
	items := [good, {"subject": "other", "inlet_cleanouts": 4}]
	inlet_cleanouts.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "inlet_cleanouts": 2}]
	inlet_cleanouts.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_one_too_few if {
	items := [good, {"subject": "other", "inlet_cleanouts": 1}]
	inlet_cleanouts.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_none if {
	items := [good, {"subject": "other", "inlet_cleanouts": 0}]
	inlet_cleanouts.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_inlet_cleanouts if {
	items := [good, {"subject": "other"}]
	inlet_cleanouts.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
