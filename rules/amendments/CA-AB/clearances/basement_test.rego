package greysill.clearances.basement_test

import rego.v2

import data.greysill.clearances.basement

limits := {"alberta_basement_from_field": {"value": 12}}

good := {"subject": "good", "works": "field", "basement": true, "distance": 13}

pairs(items) := {"clearances": {"building": items}}

test_pass_far_enough if {
	basement.proved == {"good"} with input as pairs([good])
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "basement": true, "distance": 12}]
	basement.proved == {"limit"} with input as pairs(items)
		with data.limits as limits
}

test_pass_far_from_whatever_the_house_has if {
	items := [{"subject": "far", "works": "field", "distance": 13}]
	basement.proved == {"far"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "works": "field", "basement": true, "distance": 11.999}]
	basement.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	basement.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_basement if {
	items := [good, {"subject": "unknown", "works": "field", "distance": 5}]
	basement.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	basement.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field", "basement": true}]
	basement.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	basement.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "basement": true, "distance": 5}]
	basement.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	basement.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_house_without_basement if {
	items := [good, {"subject": "slab", "works": "field", "basement": false, "distance": 5}]
	basement.excused == {{"subject": "slab", "reason": "the house has no basement"}} with input as pairs(items)
		with data.limits as limits
	basement.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "works": "tank", "basement": true, "distance": 5}]
	basement.excused == {{"subject": "tank", "reason": "the distance is that of a field"}} with input as pairs(items)
		with data.limits as limits
	basement.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}
