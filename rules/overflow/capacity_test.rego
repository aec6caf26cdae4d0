package greysill.overflow.capacity_test

import rego.v2

import data.greysill.overflow.capacity

limits := {
	"overflow_capacity": {"value": 1.5},
}

good := {"subject": "good", "below_rim": true, "storm_flow": 0.01, "capacity_to_storm": 3}

test_pass_good if {
	items := [good]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "below_rim": true, "storm_flow": 0.01, "capacity_to_storm": 1.5}]
	capacity.proved == {"other"} with input as {"spillways": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "other", "below_rim": true, "storm_flow": 0.01, "capacity_to_storm": 1.4999}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	capacity.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_fail_far_too_small if {
	items := [good, {"subject": "other", "below_rim": true, "storm_flow": 0.01, "capacity_to_storm": 0.1}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	capacity.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_not_shown_below_rim if {
	items := [good, {"subject": "other", "storm_flow": 0.01, "capacity_to_storm": 3}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	capacity.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_not_shown_storm_flow if {
	items := [good, {"subject": "other", "below_rim": true, "capacity_to_storm": 3}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	capacity.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_not_shown_capacity_to_storm if {
	items := [good, {"subject": "other", "below_rim": true, "storm_flow": 0.01}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	capacity.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_excused_no_storm if {
	items := [good, {"subject": "other", "below_rim": true, "storm_flow": 0, "capacity_to_storm": 3}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "no storm water reaches it"}}
	capacity.excused == wanted with input as {"spillways": items}
		with data.limits as limits
}

test_excused_not_below_the_rim if {
	items := [good, {"subject": "other", "below_rim": false, "storm_flow": 0.01, "capacity_to_storm": 3}]
	capacity.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "it does not lie below the rim, which overflow/below_rim judges"}}
	capacity.excused == wanted with input as {"spillways": items}
		with data.limits as limits
}
