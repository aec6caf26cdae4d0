package greysill.clearances.tree_test

import rego.v2

import data.greysill.clearances.tree

limits := {"tree_from_field": {"value": 3}}

pairs(items) := {"clearances": {"tree": items}}

pair(kind, distance) := {
	"subject": $"{kind} at {distance}",
	"works": "field",
	"part_kind": kind,
	"distance": distance,
}

far := pair("pond", 4)

test_pass_exactly_at_the_limit if {
	items := [
		pair("planted gravel bed", 3),
		pair("infiltration trench", 3),
		pair("settling basin", 3),
		pair("pond", 3),
	]
	tree.proved == {i.subject | some i in items} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_inside_the_limit if {
	items := [
		far,
		pair("planted gravel bed", 2.999),
		pair("infiltration trench", 2.999),
		pair("settling basin", 2.999),
		pair("pond", 2.999),
	]
	tree.proved == {"pond at 4"} with input as pairs(items)
		with data.limits as limits
	tree.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_fail_touching if {
	tree.proved == {"pond at 4"} with input as pairs([far, pair("pond", 0)])
		with data.limits as limits
}

test_not_shown_any_field if {
	bed := pair("planted gravel bed", 5)
	lacking := [object.union(object.remove(bed, [f]), {"subject": f}) | some f in ["works", "part_kind", "distance"]]
	items := array.concat([far], lacking)
	tree.proved == {"pond at 4"} with input as pairs(items)
		with data.limits as limits
	tree.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_mulch_basin_and_what_lets_no_water_in if {
	items := [
		far,
		pair("mulch basin", 0),
		{"subject": "tank", "works": "tank", "part_kind": "surge tank", "distance": 0},
		{"subject": "pipe", "works": "pipe", "part_kind": "drain pipe", "distance": 0},
		{"subject": "diverter", "works": "fitting", "part_kind": "diverter", "distance": 0},
	]
	tree.proved == {"pond at 4"} with input as pairs(items)
		with data.limits as limits
	excused := tree.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"mulch basin at 0", "tank", "pipe", "diverter"}
}
