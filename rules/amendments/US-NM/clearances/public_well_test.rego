package greysill.clearances.public_well_test

import rego.v2

import data.greysill.clearances.public_well

limits := {"new_mexico_public_well_from_field": {"value": 60}}

pairs(items) := {"clearances": {"well": items}}

good := {"subject": "good", "works": "field", "serves": "the public", "distance": 61}

other(entries) := object.union({"subject": "other", "works": "field", "serves": "the public", "distance": 59.999}, entries)

test_pass_exactly_at_the_limit if {
	public_well.proved == {"other"} with input as pairs([other({"distance": 60})])
		with data.limits as limits
	public_well.excused == set() with input as pairs([other({"distance": 60})])
		with data.limits as limits
}

test_pass_far_enough_whatever_the_well if {
	items := [{"subject": "other", "works": "field", "distance": 60}]
	public_well.proved == {"other"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_inside_the_limit if {
	public_well.proved == {"good"} with input as pairs([good, other({})])
		with data.limits as limits
	public_well.excused == set() with input as pairs([good, other({})])
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "other", "works": "field", "serves": "a household"}]
	public_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	public_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_serves if {
	items := [good, {"subject": "other", "works": "field", "distance": 59}]
	public_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	public_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "other", "serves": "a household", "distance": 1000}]
	public_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	public_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_household if {
	items := [good, other({"serves": "a household"})]
	public_well.excused == {{"subject": "other", "reason": "the well does not serve the public"}} with input as pairs(items)
		with data.limits as limits
	public_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}

test_excused_what_lets_nothing_out if {
	items := [good, other({"works": "tank"})]
	excused := public_well.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"other"}
	public_well.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}
