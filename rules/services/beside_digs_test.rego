package greysill.services.beside_digs_test

import rego.v2

import data.greysill.services.beside_digs

limits := {"tolerance_zone": {"value": 0.6}}

good := {"subject": "good", "distance": 2, "meets": false}

test_pass_far if {
	items := [good]
	beside_digs.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	beside_digs.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "distance": 0.6, "meets": false}]
	beside_digs.proved == {"limit"} with input as {"digs": items}
		with data.limits as limits
	beside_digs.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "distance": 0.5999, "meets": false}]
	beside_digs.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	beside_digs.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "meets": false}]
	beside_digs.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	beside_digs.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_not_shown_meets if {
	items := [good, {"subject": "unknown", "distance": 2}]
	beside_digs.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	beside_digs.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_excused_where_they_meet if {
	items := [good, {"subject": "crossing", "distance": 0, "meets": true}]
	beside_digs.proved == {"good"} with input as {"digs": items}
		with data.limits as limits
	excused := beside_digs.excused with input as {"digs": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"crossing"}
}
