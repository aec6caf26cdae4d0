package greysill.clearances.drinking_stream_test

import rego.v2

import data.greysill.clearances.drinking_stream

limits := {"victoria_drinking_stream": {"value": 8}}

good := {"subject": "good", "works": "field", "feature_kind": "stream", "distance": 9}

pairs(items) := {"clearances": {"surface_water": items}}

test_pass_far_enough if {
	drinking_stream.proved == {"good"} with input as pairs([good])
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "feature_kind": "stream", "distance": 8}]
	drinking_stream.proved == {"limit"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "works": "field", "feature_kind": "stream", "distance": 7.999}]
	drinking_stream.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	drinking_stream.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field", "feature_kind": "stream"}]
	drinking_stream.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	drinking_stream.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "feature_kind": "stream", "distance": 9}]
	drinking_stream.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	drinking_stream.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_feature_kind if {
	items := [good, {"subject": "unknown", "works": "field", "distance": 9}]
	drinking_stream.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	drinking_stream.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "works": "tank", "feature_kind": "stream", "distance": 1}]
	drinking_stream.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	drinking_stream.excused == {{"subject": "tank", "reason": "the distance is that of a field"}} with input as pairs(items)
		with data.limits as limits
}

test_excused_lake if {
	items := [good, {"subject": "other", "works": "field", "feature_kind": "lake", "distance": 1}]
	drinking_stream.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	drinking_stream.excused == {{"subject": "other", "reason": "it is no stream"}} with input as pairs(items)
		with data.limits as limits
}
