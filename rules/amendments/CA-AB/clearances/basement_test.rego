package greysill.clearances.basement_test

import rego.v2

import data.greysill.clearances.basement

limits := {"alberta_basement_from_field": {"value": 12}}

good := {"subject": "good", "works": "field", "distance": 13}

pairs(items, house) := {"clearances": {"building": items}, "system": [house]}

deep := {"subject": "the system", "basement": true}

flat := {"subject": "the system", "basement": false}

test_pass_far_enough if {
	basement.proved == {"good"} with input as pairs([good], deep)
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "distance": 12}]
	basement.proved == {"limit"} with input as pairs(items, deep)
		with data.limits as limits
	basement.excused == set() with input as pairs(items, flat)
		with data.limits as limits
}

test_pass_far_from_whatever_the_house_has if {
	basement.proved == {"good"} with input as pairs([good], {"subject": "the system"})
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "works": "field", "distance": 11.999}]
	basement.proved == {"good"} with input as pairs(items, deep)
		with data.limits as limits
	basement.excused == set() with input as pairs(items, deep)
		with data.limits as limits
}

test_not_shown_basement if {
	items := [good, {"subject": "unknown", "works": "field", "distance": 5}]
	basement.proved == {"good"} with input as pairs(items, {"subject": "the system"})
		with data.limits as limits
	basement.excused == set() with input as pairs(items, {"subject": "the system"})
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field"}]
	basement.proved == {"good"} with input as pairs(items, deep)
		with data.limits as limits
	basement.excused == set() with input as pairs(items, flat)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "distance": 5}]
	basement.proved == {"good"} with input as pairs(items, deep)
		with data.limits as limits
	basement.excused == set() with input as pairs(items, flat)
		with data.limits as limits
}

test_excused_house_without_basement if {
	items := [good, {"subject": "slab", "works": "field", "distance": 5}]
	basement.excused == {{"subject": "slab", "reason": "the house has no basement"}} with input as pairs(items, flat)
		with data.limits as limits
	basement.proved == {"good"} with input as pairs(items, flat)
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "works": "tank", "distance": 5}]
	basement.excused == {{"subject": "tank", "reason": "the distance is that of a field"}} with input as pairs(items, deep)
		with data.limits as limits
	basement.proved == {"good"} with input as pairs(items, deep)
		with data.limits as limits
}
