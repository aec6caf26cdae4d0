package greysill.services.wiring_near_water_test

import rego.v2

import data.greysill.services.wiring_near_water

limits := {"wiring_from_open_water": {"value": 1.5}}

good := {"subject": "good", "service_kind": "line voltage", "open_water": true, "distance": 3}

test_pass_far if {
	items := [good]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	wiring_near_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "service_kind": "line voltage", "open_water": true, "distance": 1.5}]
	wiring_near_water.proved == {"limit"} with input as {"digs": items}
		with data.limits as limits
	wiring_near_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "service_kind": "line voltage", "open_water": true, "distance": 1.4999}]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	wiring_near_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "service_kind": "line voltage", "open_water": true}]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	wiring_near_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_not_shown_open_water if {
	items := [good, {"subject": "unknown", "service_kind": "line voltage", "distance": 3}]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	wiring_near_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_not_shown_service_kind if {
	items := [good, {"subject": "unknown", "open_water": true, "distance": 3}]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	wiring_near_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_excused_other_services if {
	items := [good, {"subject": "gas", "service_kind": "gas", "open_water": true, "distance": 0}]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	excused := wiring_near_water.excused with input as {"digs": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"gas"}
}

test_excused_other_parts if {
	items := [good, {"subject": "bed", "service_kind": "line voltage", "open_water": false, "distance": 0}]
	wiring_near_water.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	excused := wiring_near_water.excused with input as {"digs": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"bed"}
}
