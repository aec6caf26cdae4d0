package greysill.clearances.pool_test

import rego.v2

import data.greysill.clearances.pool

limits := {
	"pool_from_field": {"value": 30},
	"pool_from_tank": {"value": 15},
}

pairs(items) := {"clearances": {"pool": items}}

pair(works, distance) := {"subject": $"{works} at {distance}", "works": works, "distance": distance}

test_pass_field_exactly_at_the_limit if {
	pool.proved == {"field at 30"} with input as pairs([pair("field", 30)])
		with data.limits as limits
}

test_pass_tank_exactly_at_the_limit if {
	pool.proved == {"tank at 15"} with input as pairs([pair("tank", 15)])
		with data.limits as limits
}

test_fail_tank_just_inside_the_limit if {
	pool.proved == {"tank at 16"} with input as pairs([pair("tank", 14.999), pair("tank", 16)])
		with data.limits as limits
}

test_fail_field_just_inside_the_limit if {
	pool.proved == {"field at 31"} with input as pairs([pair("field", 29.999), pair("field", 31)])
		with data.limits as limits
}

test_fail_part_that_touches if {
	items := [pair("field", 0), pair("tank", 0), pair("field", 30)]
	pool.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	pool.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [{"subject": "field", "works": "field"}, {"subject": "tank", "works": "tank"}, pair("field", 30)]
	pool.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	pool.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [{"subject": "part", "distance": 1000}, pair("field", 30)]
	pool.proved == {"field at 30"} with input as pairs(items)
		with data.limits as limits
	pool.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_at_any_distance if {
	items := [pair("pipe", 0), pair("pipe", 1000), pair("fitting", 0), pair("fitting", 1000), pair("field", 0)]
	excused := pool.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"pipe at 0", "pipe at 1000", "fitting at 0", "fitting at 1000"}
	pool.proved == set() with input as pairs(items)
		with data.limits as limits
}
