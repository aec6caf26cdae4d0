package greysill.clearances.ungrouted_well_test

import rego.v2

import data.greysill.clearances.ungrouted_well

limits := {"utah_ungrouted_well_from_field": {"value": 60}}

pairs(items) := {"clearances": {"well": items}}

good := {"subject": "good", "works": "field", "casing": "not grouted", "distance": 61}

other(entries) := object.union({"subject": "other", "works": "field", "casing": "not grouted", "distance": 59.999}, entries)

test_pass_exactly_at_the_limit if {
	ungrouted_well.proved == {"other"} with input as pairs([other({"distance": 60})])
		with data.limits as limits
	ungrouted_well.excused == set() with input as pairs([other({"distance": 60})])
		with data.limits as limits
}

test_pass_far_enough_whatever_the_well if {
	items := [{"subject": "other", "works": "field", "distance": 60}]
	ungrouted_well.proved == {"other"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_inside_the_limit if {
	ungrouted_well.proved == {"good"} with input as pairs([good, other({})])
		with data.limits as limits
	ungrouted_well.excused == set() with input as pairs([good, other({})])
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "other", "works": "field", "casing": "grouted"}]
	ungrouted_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ungrouted_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_casing if {
	items := [good, {"subject": "other", "works": "field", "distance": 59}]
	ungrouted_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ungrouted_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "other", "casing": "grouted", "distance": 1000}]
	ungrouted_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ungrouted_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_grouted if {
	items := [good, other({"casing": "grouted"})]
	ungrouted_well.excused == {{"subject": "other", "reason": "the well is grouted"}} with input as pairs(items)
		with data.limits as limits
	ungrouted_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}

test_excused_what_lets_nothing_out if {
	items := [good, other({"works": "tank"})]
	excused := ungrouted_well.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"other"}
	ungrouted_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}
