package greysill.clearances.slope_break_test

import rego.v2

import data.greysill.clearances.slope_break

limits := {
	"slope_break_from_field": {"value": 30},
}

pairs(items) := {"clearances": {"ground": items}}

pair(works, distance) := {"subject": $"{works} at {distance}", "works": works, "distance": distance}

test_pass_field_exactly_at_the_limit if {
	slope_break.proved == {"field at 30"} with input as pairs([pair("field", 30)])
		with data.limits as limits
}

test_fail_field_just_inside_the_limit if {
	slope_break.proved == {"field at 31"} with input as pairs([pair("field", 29.999), pair("field", 31)])
		with data.limits as limits
}

test_fail_part_that_touches if {
	items := [pair("field", 0), pair("field", 30)]
	slope_break.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	slope_break.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [{"subject": "field", "works": "field"}, pair("field", 30)]
	slope_break.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	slope_break.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [{"subject": "part", "distance": 1000}, pair("field", 30)]
	slope_break.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	slope_break.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_at_any_distance if {
	items := [pair("tank", 0), pair("tank", 1000), pair("pipe", 0), pair("pipe", 1000), pair("fitting", 0), pair("fitting", 1000), pair("field", 0)]
	excused := slope_break.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"tank at 0", "tank at 1000", "pipe at 0", "pipe at 1000", "fitting at 0", "fitting at 1000"}
	slope_break.proved == set() with input as pairs(items)
		with data.limits as limits
}
