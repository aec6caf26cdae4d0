package greysill.services.crossing_drinking_water_test

import rego.v2

import data.greysill.services.crossing_drinking_water

limits := {"crossing_drinking_water": {"value": 0.3}}

good := {"subject": "good", "service_kind": "water", "joins": false, "above": "service", "vertical_clearance": 0.5}

test_pass_water_above if {
	items := [good]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "service_kind": "water", "joins": false, "above": "service", "vertical_clearance": 0.3}]
	crossing_drinking_water.proved == {"limit"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "service_kind": "water", "joins": false, "above": "service", "vertical_clearance": 0.2999}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_fail_water_below if {
	items := [good, {"subject": "bad", "service_kind": "water", "joins": false, "above": "pipe", "vertical_clearance": 0.5}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_above if {
	items := [good, {"subject": "unknown", "service_kind": "water", "joins": false, "vertical_clearance": 0.5}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_vertical_clearance if {
	items := [good, {"subject": "unknown", "service_kind": "water", "joins": false, "above": "service"}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_service_kind if {
	items := [good, {"subject": "unknown", "joins": false, "above": "service", "vertical_clearance": 0.5}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_drinking_water.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_excused_other_services if {
	items := [good, {"subject": "gas", "service_kind": "gas", "joins": false, "above": "pipe", "vertical_clearance": 0.5}, {"subject": "sewer", "service_kind": "sewer", "joins": false, "above": "pipe", "vertical_clearance": 0.5}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	excused := crossing_drinking_water.excused with input as {"crossings": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"gas", "sewer"}
}

test_excused_where_they_meet if {
	items := [good, {"subject": "met", "service_kind": "water", "joins": false, "above": "neither", "vertical_clearance": -0.1}]
	crossing_drinking_water.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	excused := crossing_drinking_water.excused with input as {"crossings": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"met"}
}
