package greysill.flow.surge_held_test

import rego.v2

import data.greysill.flow.surge_held

limits := {"surge_share": {"value": 1}}

good := {"subject": "good", "meets_holding": true, "share_of_room": 0.4}

test_pass_with_room if {
	items := [good]
	surge_held.proved == {"good"} with input as {"surges": items}
		with data.limits as limits
	surge_held.excused == set() with input as {"surges": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "meets_holding": true, "share_of_room": 1}]
	surge_held.proved == {"limit"} with input as {"surges": items}
		with data.limits as limits
	surge_held.excused == set() with input as {"surges": items}
		with data.limits as limits
}

test_fail_just_too_much if {
	items := [good, {"subject": "bad", "meets_holding": true, "share_of_room": 1.001}]
	surge_held.proved == {"good"} with input as {"surges": items}
		with data.limits as limits
	surge_held.excused == set() with input as {"surges": items}
		with data.limits as limits
}

test_not_shown_share_of_room if {
	items := [good, {"subject": "unknown", "meets_holding": true}]
	surge_held.proved == {"good"} with input as {"surges": items}
		with data.limits as limits
	surge_held.excused == set() with input as {"surges": items}
		with data.limits as limits
}

test_not_shown_meets_holding if {
	items := [good, {"subject": "unknown", "share_of_room": 0.4}]
	surge_held.proved == {"good"} with input as {"surges": items}
		with data.limits as limits
	surge_held.excused == set() with input as {"surges": items}
		with data.limits as limits
}

test_excused_taken_up if {
	items := [good, {"subject": "mulched", "meets_holding": false}]
	surge_held.proved == {"good"} with input as {"surges": items}
		with data.limits as limits
	excused := surge_held.excused with input as {"surges": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"mulched"}
}
