package greysill.services.crossing_clearance_test

import rego.v2

import data.greysill.services.crossing_clearance

limits := {"crossing_clearance": {"value": 0.3}}

good := {"subject": "good", "service_kind": "gas", "joins": false, "above": "pipe", "vertical_clearance": 0.5}

test_pass_with_room if {
	items := [good, {"subject": "sewer", "service_kind": "sewer", "joins": false, "above": "service", "vertical_clearance": 0.5}]
	crossing_clearance.proved == {"good", "sewer"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "service_kind": "gas", "joins": false, "above": "pipe", "vertical_clearance": 0.3}]
	crossing_clearance.proved == {"limit"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "service_kind": "gas", "joins": false, "above": "pipe", "vertical_clearance": 0.2999}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_vertical_clearance if {
	items := [good, {"subject": "unknown", "service_kind": "gas", "joins": false, "above": "pipe"}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_above if {
	items := [good, {"subject": "unknown", "service_kind": "gas", "joins": false, "vertical_clearance": 0.5}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_joins if {
	items := [good, {"subject": "unknown", "service_kind": "gas", "above": "pipe", "vertical_clearance": 0.5}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_not_shown_service_kind if {
	items := [good, {"subject": "unknown", "joins": false, "above": "pipe", "vertical_clearance": 0.5}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	crossing_clearance.excused == set() with input as {"crossings": items}
		with data.limits as limits
}

test_excused_water if {
	items := [good, {"subject": "water", "service_kind": "water", "joins": false, "above": "pipe", "vertical_clearance": 0}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	excused := crossing_clearance.excused with input as {"crossings": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"water"}
}

test_excused_where_they_meet if {
	items := [good, {"subject": "met", "service_kind": "gas", "joins": false, "above": "neither", "vertical_clearance": -0.1}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	excused := crossing_clearance.excused with input as {"crossings": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"met"}
}

test_excused_at_its_connection if {
	items := [good, {"subject": "end", "service_kind": "gas", "joins": true, "above": "pipe", "vertical_clearance": 0}]
	crossing_clearance.proved == {"good"} with input as {"crossings": items}
		with data.limits as limits
	excused := crossing_clearance.excused with input as {"crossings": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"end"}
}
