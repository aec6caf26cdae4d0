package greysill.treatment.section_load_test

import rego.v2

import data.greysill.treatment.section_load

limits := {"section_load_greatest": {"value": 2.9e-06}}

good := {"subject": "good", "greatest_section_load": 1e-06}

test_pass_light if {
	items := [good, {"subject": "other", "greatest_section_load": 5e-07}]
	section_load.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "greatest_section_load": 2.9e-06}]
	section_load.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_fail_just_too_heavy if {
	items := [good, {"subject": "other", "greatest_section_load": 2.901e-06}]
	section_load.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_not_shown_greatest_section_load if {
	items := [good, {"subject": "other"}]
	section_load.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}
