package greysill.clearances.seepage_pit_test

import rego.v2

import data.greysill.clearances.seepage_pit

limits := {"california_seepage_pit_from_field": {"value": 1.5}}

pairs(items) := {"clearances": {"disposal_field": items}}

good := {"subject": "good", "feature_kind": "seepage pit", "works": "field", "distance": 2}

other(entries) := object.union({"subject": "other", "feature_kind": "seepage pit", "works": "field", "distance": 1}, entries)

test_pass_exactly_at_the_limit if {
	seepage_pit.proved == {"other"} with input as pairs([other({"distance": 1.5})])
		with data.limits as limits
	seepage_pit.excused == set() with input as pairs([other({"distance": 1.5})])
		with data.limits as limits
}

test_fail_just_inside_the_limit if {
	items := [good, other({"distance": 1.4999})]
	seepage_pit.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	seepage_pit.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "other", "feature_kind": "seepage pit", "works": "field"}]
	seepage_pit.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	seepage_pit.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "other", "feature_kind": "seepage pit", "distance": 9}]
	seepage_pit.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	seepage_pit.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_feature_kind if {
	items := [good, {"subject": "other", "works": "field", "distance": 9}]
	seepage_pit.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	seepage_pit.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_leach_field_and_tank if {
	items := [good, other({"subject": "leach", "feature_kind": "disposal field"}), other({"subject": "tank", "works": "tank"})]
	excused := seepage_pit.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"leach", "tank"}
	seepage_pit.proved == {"good"} with input as pairs(items)
		with data.limits as limits
}
