package greysill.settling.clean_out_test

import rego.v2

import data.greysill.settling.clean_out

limits := {
	"sludge_room_filled": {"value": 0.8},
}

good := {"subject": "good", "kind": "settling basin", "sludge_room_filled": 0.5}

test_pass_good if {
	items := [good]
	clean_out.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "kind": "settling basin", "sludge_room_filled": 0.8}]
	clean_out.proved == {"other"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_full if {
	items := [good, {"subject": "other", "kind": "settling basin", "sludge_room_filled": 0.8001}]
	clean_out.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	clean_out.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_overfull if {
	items := [good, {"subject": "other", "kind": "settling basin", "sludge_room_filled": 3}]
	clean_out.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	clean_out.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "sludge_room_filled": 0.5}]
	clean_out.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	clean_out.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_sludge_room_filled if {
	items := [good, {"subject": "other", "kind": "settling basin"}]
	clean_out.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	clean_out.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_excused_surge_tank if {
	items := [good, {"subject": "other", "kind": "surge tank", "sludge_room_filled": 0.5}]
	clean_out.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a surge tank evens out the flow and is not there to settle"}}
	clean_out.excused == wanted with input as {"settling": items}
		with data.limits as limits
}
