package greysill.flow.individual_system_test

import rego.v2

import data.greysill.flow.individual_system

limits := {
	"hawaii_system_flow": {"value": 0.00005},
	"hawaii_system_bedrooms": {"value": 5},
}

good := {"subject": "good", "sewage": "septic tank", "daily_flow": 0.00001, "bedrooms": 3}

other(entries) := object.union({"subject": "other", "sewage": "septic tank", "daily_flow": 0.00001, "bedrooms": 3}, entries)

test_pass_exactly_at_the_limits if {
	items := [other({"daily_flow": 0.00005, "bedrooms": 5})]
	individual_system.proved == {"other"} with input as {"system": items}
		with data.limits as limits
	individual_system.excused == set() with input as {"system": items}
		with data.limits as limits
}

test_fail_too_much_flow if {
	items := [good, other({"daily_flow": 0.0000501})]
	individual_system.proved == {"good"} with input as {"system": items}
		with data.limits as limits
	individual_system.excused == set() with input as {"system": items}
		with data.limits as limits
}

test_fail_too_many_bedrooms if {
	items := [good, other({"bedrooms": 6})]
	individual_system.proved == {"good"} with input as {"system": items}
		with data.limits as limits
	individual_system.excused == set() with input as {"system": items}
		with data.limits as limits
}

test_not_shown_daily_flow if {
	items := [good, {"subject": "other", "sewage": "septic tank", "bedrooms": 3}]
	individual_system.proved == {"good"} with input as {"system": items}
		with data.limits as limits
	individual_system.excused == set() with input as {"system": items}
		with data.limits as limits
}

test_not_shown_bedrooms if {
	items := [good, {"subject": "other", "sewage": "septic tank", "daily_flow": 0.00001}]
	individual_system.proved == {"good"} with input as {"system": items}
		with data.limits as limits
	individual_system.excused == set() with input as {"system": items}
		with data.limits as limits
}

test_not_shown_sewage if {
	items := [good, {"subject": "other", "daily_flow": 0.00001, "bedrooms": 3}]
	individual_system.proved == {"good"} with input as {"system": items}
		with data.limits as limits
	individual_system.excused == set() with input as {"system": items}
		with data.limits as limits
}

test_excused_sewer if {
	items := [good, other({"sewage": "sewer", "bedrooms": 9})]
	individual_system.excused == {{"subject": "other", "reason": "the house is on a sewer"}} with input as {"system": items}
		with data.limits as limits
	individual_system.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}
