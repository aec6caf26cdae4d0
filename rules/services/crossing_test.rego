package greysill.services.crossing_test

import rego.v2

import data.greysill.services.crossing

good := {"subject": "good", "service_kind": "gas", "joins": false, "above": "pipe", "vertical_clearance": 0.5}

test_pass_above if {
	items := [good]
	crossing.proved == {"good"} with input as {"crossings": items}
	crossing.excused == set() with input as {"crossings": items}
}

test_pass_below if {
	items := [{"subject": "below", "service_kind": "gas", "joins": false, "above": "service", "vertical_clearance": 0.5}]
	crossing.proved == {"below"} with input as {"crossings": items}
	crossing.excused == set() with input as {"crossings": items}
}

test_fail_meeting if {
	items := [good, {"subject": "bad", "service_kind": "gas", "joins": false, "above": "neither", "vertical_clearance": 0.5}]
	crossing.proved == {"good"} with input as {"crossings": items}
	crossing.excused == set() with input as {"crossings": items}
}

test_not_shown_above if {
	items := [good, {"subject": "unknown", "service_kind": "gas", "joins": false, "vertical_clearance": 0.5}]
	crossing.proved == {"good"} with input as {"crossings": items}
	crossing.excused == set() with input as {"crossings": items}
}

test_not_shown_joins if {
	items := [good, {"subject": "unknown", "service_kind": "gas", "above": "pipe", "vertical_clearance": 0.5}]
	crossing.proved == {"good"} with input as {"crossings": items}
	crossing.excused == set() with input as {"crossings": items}
}

test_excused_at_its_connection if {
	items := [good, {"subject": "end", "service_kind": "gas", "joins": true, "above": "neither", "vertical_clearance": 0.5}]
	crossing.proved == {"good"} with input as {"crossings": items}
	excused := crossing.excused with input as {"crossings": items}
	{e.subject | some e in excused} == {"end"}
}
