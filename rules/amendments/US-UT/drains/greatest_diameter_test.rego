package greysill.drains.greatest_diameter_test

import rego.v2

import data.greysill.drains.greatest_diameter

limits := {"utah_pipe_diameter_greatest": {"value": 0.1}}

good := {"subject": "good", "leads_to_train": true, "diameter": 0.05}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "leads_to_train": true, "diameter": 0.1}]
	greatest_diameter.proved == {"limit"} with input as {"pipes": items}
		with data.limits as limits
	greatest_diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_fail_just_too_wide if {
	items := [good, {"subject": "bad", "leads_to_train": true, "diameter": 0.1001}]
	greatest_diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	greatest_diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_diameter if {
	items := [good, {"subject": "other", "leads_to_train": true}]
	greatest_diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	greatest_diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_leads_to_train if {
	items := [good, {"subject": "other", "diameter": 0.05}]
	greatest_diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	greatest_diameter.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_excused_drain_of_the_house if {
	items := [good, {"subject": "other", "leads_to_train": false, "diameter": 0.15}]
	excused := greatest_diameter.excused with input as {"pipes": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"other"}
	greatest_diameter.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
}
