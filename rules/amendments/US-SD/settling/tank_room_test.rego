package greysill.settling.tank_room_test

import rego.v2

import data.greysill.settling.tank_room

limits := {"tank_room_per_person": {"value": 0.3}}

good := {"subject": "good", "volume_per_occupant": 0.4}

test_pass_within if {
	tank_room.proved == {"good"} with input as {"settling": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "volume_per_occupant": 0.3}]
	tank_room.proved == {"limit"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "volume_per_occupant": 0.299}]
	tank_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_volume_per_occupant if {
	items := [good, {"subject": "unknown"}]
	tank_room.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}
