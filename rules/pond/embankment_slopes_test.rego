package greysill.pond.embankment_slopes_test

import rego.v2

import data.greysill.pond.embankment_slopes

limits := {
	"embankment_slope": {"value": 0.5},
	"embankment_runs": {"value": 5},
}

good := {
	"subject": "good",
	"has_embankment": true,
	"inside_slope": 0.3,
	"outside_slope": 0.3,
	"embankment_runs": 6.7,
}

test_pass_good if {
	items := [good]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limits if {
	items := [
		{"subject": "other", "has_embankment": true, "inside_slope": 0.5, "outside_slope": 0.5, "embankment_runs": 5},
	]
	embankment_slopes.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_inside_just_too_steep if {
	items := [
		good,
		{"subject": "other", "has_embankment": true, "inside_slope": 0.5001, "outside_slope": 0.3, "embankment_runs": 6.7},
	]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_outside_just_too_steep if {
	items := [
		good,
		{"subject": "other", "has_embankment": true, "inside_slope": 0.3, "outside_slope": 0.5001, "embankment_runs": 6.7},
	]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_together_just_too_steep if {
	items := [
		good,
		{"subject": "other", "has_embankment": true, "inside_slope": 0.3, "outside_slope": 0.3, "embankment_runs": 4.999},
	]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_a_wall_of_earth if {
	items := [
		good,
		{"subject": "other", "has_embankment": true, "inside_slope": 1, "outside_slope": 1, "embankment_runs": 2},
	]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_has_embankment if {
	items := [good, {"subject": "other", "inside_slope": 0.3, "outside_slope": 0.3, "embankment_runs": 6.7}]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_inside_slope if {
	items := [good, {"subject": "other", "has_embankment": true, "outside_slope": 0.3, "embankment_runs": 6.7}]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_outside_slope if {
	items := [good, {"subject": "other", "has_embankment": true, "inside_slope": 0.3, "embankment_runs": 6.7}]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_embankment_runs if {
	items := [good, {"subject": "other", "has_embankment": true, "inside_slope": 0.3, "outside_slope": 0.3}]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_slopes.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_excused_no_embankment if {
	items := [
		good,
		{"subject": "other", "has_embankment": false, "inside_slope": 0.3, "outside_slope": 0.3, "embankment_runs": 6.7},
	]
	embankment_slopes.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "no embankment is drawn"}}
	embankment_slopes.excused == wanted with input as {"ponds": items}
		with data.limits as limits
}
