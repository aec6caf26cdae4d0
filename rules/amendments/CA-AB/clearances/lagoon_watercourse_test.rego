package greysill.clearances.lagoon_watercourse_test

import rego.v2

import data.greysill.clearances.lagoon_watercourse

limits := {"alberta_lagoon_from_water": {"value": 70}}

good := {"subject": "good", "part_kind": "pond", "distance": 80}

pairs(items) := {"clearances": {"surface_water": items}}

test_pass_far_enough if {
	lagoon_watercourse.proved == {"good"} with input as pairs([good])
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "part_kind": "pond", "distance": 70}]
	lagoon_watercourse.proved == {"limit"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "part_kind": "pond", "distance": 69.999}]
	lagoon_watercourse.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	lagoon_watercourse.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "part_kind": "pond"}]
	lagoon_watercourse.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	lagoon_watercourse.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_part_kind if {
	items := [good, {"subject": "unknown", "distance": 1}]
	lagoon_watercourse.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	lagoon_watercourse.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_bed if {
	items := [good, {"subject": "bed", "part_kind": "planted gravel bed", "distance": 1}]
	lagoon_watercourse.excused == {{"subject": "bed", "reason": "it is no pond"}} with input as pairs(items)
		with data.limits as limits
	lagoon_watercourse.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "part_kind": "surge tank", "distance": 1}]
	lagoon_watercourse.excused == {{"subject": "tank", "reason": "it is no pond"}} with input as pairs(items)
		with data.limits as limits
	lagoon_watercourse.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}
