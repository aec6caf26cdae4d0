package greysill.dispersal.circular_area_test

import rego.v2

import data.greysill.dispersal.circular_area

limits := {"circular_area": {"value": 2}}

good := {"subject": "good", "basis": "Montana, on-site sewage", "area_wanted": 5, "counted_to_wanted": 3}

test_pass_large_enough if {
	circular_area.proved == {"good"} with input as {"soakage_areas": [good]}
		with data.limits as limits
	circular_area.excused == set() with input as {"soakage_areas": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [object.union(good, {"subject": "limit", "counted_to_wanted": 2})]
	circular_area.proved == {"limit"} with input as {"soakage_areas": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, object.union(good, {"subject": "bad", "counted_to_wanted": 1.99})]
	circular_area.proved == {"good"} with input as {"soakage_areas": items}
		with data.limits as limits
	circular_area.excused == set() with input as {"soakage_areas": items}
		with data.limits as limits
}

test_not_shown_counted_to_wanted if {
	items := [good, {"subject": "unknown", "basis": "Montana, on-site sewage", "area_wanted": 5}]
	circular_area.proved == {"good"} with input as {"soakage_areas": items}
		with data.limits as limits
	circular_area.excused == set() with input as {"soakage_areas": items}
		with data.limits as limits
}

test_not_shown_area_wanted if {
	items := [good, {"subject": "unknown", "basis": "Montana, on-site sewage", "counted_to_wanted": 3}]
	circular_area.proved == {"good"} with input as {"soakage_areas": items}
		with data.limits as limits
	circular_area.excused == set() with input as {"soakage_areas": items}
		with data.limits as limits
}

test_excused_overflow_alone if {
	items := [good, {"subject": "overflow", "basis": "Montana, on-site sewage", "area_wanted": 0}]
	circular_area.proved == {"good"} with input as {"soakage_areas": items}
		with data.limits as limits
	excused := circular_area.excused with input as {"soakage_areas": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"overflow"}
}

test_not_shown_basis if {
	items := [good, {"subject": "unknown", "area_wanted": 5, "counted_to_wanted": 3}]
	circular_area.proved == {"good"} with input as {"soakage_areas": items}
		with data.limits as limits
	circular_area.excused == set() with input as {"soakage_areas": items}
		with data.limits as limits
}

test_excused_other_tables if {
	bases := ["Utah, trench", "Utah, mulch basin", "Uniform Plumbing Code, six soils", "Texas, on-site sewage", "International Plumbing Code, seepage"]
	items := array.concat([good], [{"subject": b, "basis": b, "counted_to_wanted": 0.1} | some b in bases])
	circular_area.proved == {"good"} with input as {"soakage_areas": items}
		with data.limits as limits
	excused := circular_area.excused with input as {"soakage_areas": items}
		with data.limits as limits
	{e.subject | some e in excused} == {b | some b in bases}
}
