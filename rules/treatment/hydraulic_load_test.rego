package greysill.treatment.hydraulic_load_test

import rego.v2

import data.greysill.treatment.hydraulic_load

limits := {"hydraulic_load_greatest": {"value": 6e-07}}

good := {"subject": "good", "hydraulic_loading": 3e-07}

test_pass_light if {
	items := [good, {"subject": "other", "hydraulic_loading": 2e-07}]
	hydraulic_load.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "hydraulic_loading": 6e-07}]
	hydraulic_load.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_fail_just_too_much if {
	items := [good, {"subject": "other", "hydraulic_loading": 6.001e-07}]
	hydraulic_load.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_not_shown_hydraulic_loading if {
	items := [good, {"subject": "other"}]
	hydraulic_load.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}
