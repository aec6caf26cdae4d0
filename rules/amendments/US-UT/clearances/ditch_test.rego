package greysill.clearances.ditch_test

import rego.v2

import data.greysill.clearances.ditch

limits := {
	"utah_ditch_from_field": {"value": 30},
	"utah_ditch_from_tank": {"value": 8},
}

pairs(items) := {"clearances": {"drainage": items}}

pair(kind, works, distance) := {
	"subject": $"{works} at {distance} of {kind}",
	"feature_kind": kind,
	"works": works,
	"distance": distance,
}

good := {"subject": "good", "feature_kind": "ditch", "works": "field", "distance": 31}

test_pass_exactly_at_the_limit if {
	items := [pair("ditch", "field", 30), pair("ditch", "tank", 8)]
	ditch.proved == {"field at 30 of ditch", "tank at 8 of ditch"} with input as pairs(items)
		with data.limits as limits
	ditch.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_fail_just_inside_the_limit if {
	items := [good, pair("ditch", "field", 29.999), pair("ditch", "tank", 7.999)]
	ditch.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ditch.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "field", "feature_kind": "ditch", "works": "field"}, {"subject": "tank", "feature_kind": "ditch", "works": "tank"}]
	ditch.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ditch.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "other", "feature_kind": "ditch", "distance": 1000}]
	ditch.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ditch.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_feature_kind if {
	items := [good, {"subject": "other", "works": "field", "distance": 1000}]
	ditch.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	ditch.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_other_drains_and_pipes if {
	items := [
		good,
		pair("storm drain", "field", 1),
		pair("neighbour's drain", "tank", 1),
		pair("ditch", "pipe", 0),
		pair("storm drain", "fitting", 0),
	]
	excused := ditch.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {
		"field at 1 of storm drain",
		"tank at 1 of neighbour's drain",
		"pipe at 0 of ditch",
		"fitting at 0 of storm drain",
	}
	ditch.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}
