package greysill.clearances.well_test

import rego.v2

import data.greysill.clearances.well

limits := {
	"well_from_field": {"value": 30},
	"well_from_tank": {"value": 15},
	"well_from_pipe": {"value": 8},
}

pairs(items) := {"clearances": {"well": items}}

pair(works, distance) := {"subject": $"{works} at {distance}", "works": works, "distance": distance}

test_pass_field_exactly_at_the_limit if {
	well.proved == {"field at 30"} with input as pairs([pair("field", 30)])
		with data.limits as limits
}

test_pass_tank_exactly_at_the_limit if {
	well.proved == {"tank at 15"} with input as pairs([pair("tank", 15)])
		with data.limits as limits
}

test_pass_pipe_exactly_at_the_limit if {
	well.proved == {"pipe at 8"} with input as pairs([pair("pipe", 8)])
		with data.limits as limits
}

test_fail_field_just_inside_the_limit if {
	well.proved == {"field at 31"} with input as pairs([pair("field", 29.999), pair("field", 31)])
		with data.limits as limits
}

test_fail_tank_just_inside_the_limit if {
	well.proved == {"tank at 16"} with input as pairs([pair("tank", 14.999), pair("tank", 16)])
		with data.limits as limits
}

test_fail_pipe_just_inside_the_limit if {
	well.proved == {"pipe at 9"} with input as pairs([pair("pipe", 7.999), pair("pipe", 9)])
		with data.limits as limits
}

test_fail_part_that_touches if {
	well.proved == set() with input as pairs([pair("field", 0), pair("tank", 0), pair("pipe", 0)])
		with data.limits as limits
	well.excused == set() with input as pairs([pair("field", 0), pair("tank", 0), pair("pipe", 0)])
		with data.limits as limits
}

test_not_shown_distance_missing if {
	items := [
		{"subject": "field", "works": "field"},
		{"subject": "tank", "works": "tank"},
		{"subject": "pipe", "works": "pipe"},
		pair("field", 30),
	]
	well.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works_missing if {
	items := [{"subject": "part", "distance": 1000}, pair("field", 30)]
	well.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_fitting_at_any_distance if {
	items := [pair("fitting", 0), pair("fitting", 1000), pair("field", 0)]
	excused := well.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"fitting at 0", "fitting at 1000"}
	well.proved == set() with input as pairs(items)
		with data.limits as limits
}
