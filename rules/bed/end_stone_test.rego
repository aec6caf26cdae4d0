package greysill.bed.end_stone_test

import rego.v2

import data.greysill.bed.end_stone

limits := {
	"end_stone_least": {"value": 0.05},
	"end_stone_greatest": {"value": 0.075},
}

good := {"subject": "good", "inlet_stone": 0.06, "outlet_stone": 0.06}

test_pass_coarse_at_both_ends if {
	items := [good, {"subject": "other", "inlet_stone": 0.06, "outlet_stone": 0.06}]
	end_stone.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_least if {
	items := [good, {"subject": "other", "inlet_stone": 0.05, "outlet_stone": 0.05}]
	end_stone.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_greatest if {
	items := [good, {"subject": "other", "inlet_stone": 0.075, "outlet_stone": 0.075}]
	end_stone.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_fine_at_the_inlet if {
	items := [good, {"subject": "other", "inlet_stone": 0.0499, "outlet_stone": 0.06}]
	end_stone.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_coarse_at_the_inlet if {
	items := [good, {"subject": "other", "inlet_stone": 0.0751, "outlet_stone": 0.06}]
	end_stone.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_fine_at_the_outlet if {
	items := [good, {"subject": "other", "inlet_stone": 0.06, "outlet_stone": 0.0499}]
	end_stone.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_coarse_at_the_outlet if {
	items := [good, {"subject": "other", "inlet_stone": 0.06, "outlet_stone": 0.0751}]
	end_stone.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_inlet_stone if {
	items := [good, {"subject": "other", "outlet_stone": 0.06}]
	end_stone.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_outlet_stone if {
	items := [good, {"subject": "other", "inlet_stone": 0.06}]
	end_stone.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
