package greysill.bed.inlet_spread_test

import rego.v2

import data.greysill.bed.inlet_spread

limits := {"inlet_spread": {"value": 0.75}}

good := {"subject": "good", "inlet_spread": 0.9}

test_pass_the_whole_width if {
	items := [good, {"subject": "other", "inlet_spread": 1}]
	inlet_spread.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "inlet_spread": 0.75}]
	inlet_spread.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_short if {
	items := [good, {"subject": "other", "inlet_spread": 0.7499}]
	inlet_spread.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_inlet_spread if {
	items := [good, {"subject": "other"}]
	inlet_spread.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
