package greysill.treatment.organic_load_test

import rego.v2

import data.greysill.treatment.organic_load

limits := {"areal_load_greatest": {"value": 9e-08}}

good := {"subject": "good", "greatest_areal_load": 5e-08}

test_pass_light if {
	items := [good, {"subject": "other", "greatest_areal_load": 1e-08}]
	organic_load.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "greatest_areal_load": 9e-08}]
	organic_load.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_fail_just_too_heavy if {
	items := [good, {"subject": "other", "greatest_areal_load": 9.001e-08}]
	organic_load.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_not_shown_greatest_areal_load if {
	items := [good, {"subject": "other"}]
	organic_load.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}
