package greysill.clearances.building_downhill_test

import rego.v2

import data.greysill.clearances.building_downhill

limits := {"victoria_building_downhill": {"value": 8}}

good := {"subject": "good", "works": "field", "distance": 9}

pairs(items) := {"clearances": {"building": items}}

test_pass_far_enough if {
	building_downhill.proved == {"good"} with input as pairs([good])
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "distance": 8}]
	building_downhill.proved == {"limit"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "works": "field", "distance": 7.999}]
	building_downhill.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	building_downhill.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field"}]
	building_downhill.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	building_downhill.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "distance": 9}]
	building_downhill.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	building_downhill.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "works": "tank", "distance": 1}]
	building_downhill.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	building_downhill.excused == {{"subject": "tank", "reason": "the distance is that of a field"}} with input as pairs(items)
		with data.limits as limits
}
