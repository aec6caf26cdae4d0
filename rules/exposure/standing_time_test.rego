package greysill.exposure.standing_time_test

import rego.v2

import data.greysill.exposure.standing_time

limits := {"tank_standing_time": {"value": 86400}}

good := {"subject": "good", "kind": "surge tank", "detention": 40000}

test_pass_half_a_day if {
	items := [good, {"subject": "other", "kind": "surge tank", "detention": 43200}]
	standing_time.proved == {"good", "other"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "kind": "surge tank", "detention": 86400}]
	standing_time.proved == {"good", "other"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_long if {
	items := [good, {"subject": "other", "kind": "surge tank", "detention": 86401}]
	standing_time.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_excused_settling_basin if {
	items := [good, {"subject": "other", "kind": "settling basin", "detention": 300000}]
	standing_time.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == {{"subject": "other", "reason": "a settling basin holds water so that it settles"}}
		with input as {"settling": items}
		with data.limits as limits
}

test_excused_settling_basin_whatever_it_holds if {
	items := [good, {"subject": "other", "kind": "settling basin"}]
	standing_time.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == {{"subject": "other", "reason": "a settling basin holds water so that it settles"}}
		with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "detention": 40000}]
	standing_time.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_detention if {
	items := [good, {"subject": "other", "kind": "surge tank"}]
	standing_time.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	standing_time.excused == set() with input as {"settling": items}
		with data.limits as limits
}
