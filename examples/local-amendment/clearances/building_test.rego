package greysill.clearances.building_test

import rego.v2

import data.greysill.clearances.building

limits := {"tarn_building_from_field": {"value": 3}}

good := {"subject": "good", "works": "field", "distance": 4}

test_pass_far_enough if {
	building.proved == {"good"} with input as {"clearances": {"building": [good]}}
		with data.limits as limits
	building.excused == set() with input as {"clearances": {"building": [good]}}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "distance": 3}]
	building.proved == {"limit"} with input as {"clearances": {"building": items}}
		with data.limits as limits
}

test_fail_too_near if {
	items := [good, {"subject": "bad", "works": "field", "distance": 2.99}]
	building.proved == {"good"} with input as {"clearances": {"building": items}}
		with data.limits as limits
	building.excused == set() with input as {"clearances": {"building": items}}
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field"}]
	building.proved == {"good"} with input as {"clearances": {"building": items}}
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "distance": 4}]
	building.proved == {"good"} with input as {"clearances": {"building": items}}
		with data.limits as limits
	building.excused == set() with input as {"clearances": {"building": items}}
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "works": "tank", "distance": 0}]
	building.excused == {{"subject": "tank", "reason": "the county wants no distance of what lets nothing out"}} with input as {"clearances": {"building": items}}
		with data.limits as limits
	building.proved == {"good"} with input as {"clearances": {"building": items}}
		with data.limits as limits
}
