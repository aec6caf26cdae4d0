package greysill.settling.sludge_room_test

import rego.v2

import data.greysill.settling.sludge_room

limits := {
	"sludge_share": {"value": 0.4},
}

good := {"subject": "good", "kind": "settling basin", "sludge_share": 0.3}

test_pass_good if {
	items := [good]
	sludge_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "settling basin", "sludge_share": 0.4}]
	sludge_room.proved == {"other"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_much if {
	items := [good, {"subject": "other", "kind": "settling basin", "sludge_share": 0.4001}]
	sludge_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	sludge_room.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_nearly_all if {
	items := [good, {"subject": "other", "kind": "settling basin", "sludge_share": 0.9}]
	sludge_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	sludge_room.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "sludge_share": 0.3}]
	sludge_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	sludge_room.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_sludge_share if {
	items := [good, {"subject": "other", "kind": "settling basin"}]
	sludge_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	sludge_room.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_excused_surge_tank if {
	items := [good, {"subject": "other", "kind": "surge tank", "sludge_share": 0.3}]
	sludge_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a surge tank evens out the flow and is not there to settle"}}
	sludge_room.excused == wanted with input as {"settling": items}
		with data.limits as limits
}
