package greysill.drains.diameter_test

import rego.v2

import data.greysill.drains.diameter

limits := {"drain_diameter": {"value": 0.05}}

good := {"subject": "good", "leads_to_train": true, "diameter": 0.08}

test_pass_wide if {
	items := [good]
	diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "leads_to_train": true, "diameter": 0.05}]
	diameter.proved == {"limit"} with input as {"pipes": items}
		with data.limits as limits
	diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_fail_just_too_narrow if {
	items := [good, {"subject": "bad", "leads_to_train": true, "diameter": 0.0499}]
	diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_diameter if {
	items := [good, {"subject": "unknown", "leads_to_train": true}]
	diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_leads_to_train if {
	items := [good, {"subject": "unknown", "diameter": 0.08}]
	diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_excused_to_the_sewer if {
	items := [good, {"subject": "waste", "leads_to_train": false, "diameter": 0.03}]
	diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	excused := diameter.excused with input as {"pipes": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"waste"}
}
