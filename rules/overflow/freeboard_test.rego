package greysill.overflow.freeboard_test

import rego.v2

import data.greysill.overflow.freeboard

limits := {
	"overflow_freeboard": {"value": 0.2},
}

good := {"subject": "good", "below_rim": true, "serves_pond": false, "head": 0.3}

test_pass_good if {
	items := [good]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "below_rim": true, "serves_pond": false, "head": 0.2}]
	freeboard.proved == {"other"} with input as {"spillways": items}
		with data.limits as limits
}

test_fail_just_too_little if {
	items := [good, {"subject": "other", "below_rim": true, "serves_pond": false, "head": 0.1999}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	freeboard.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_fail_hardly_any if {
	items := [good, {"subject": "other", "below_rim": true, "serves_pond": false, "head": 0.01}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	freeboard.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_not_shown_below_rim if {
	items := [good, {"subject": "other", "serves_pond": false, "head": 0.3}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	freeboard.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_not_shown_serves_pond if {
	items := [good, {"subject": "other", "below_rim": true, "head": 0.3}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	freeboard.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_not_shown_head if {
	items := [good, {"subject": "other", "below_rim": true, "serves_pond": false}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	freeboard.excused == set() with input as {"spillways": items}
		with data.limits as limits
}

test_excused_pond if {
	items := [good, {"subject": "other", "below_rim": true, "serves_pond": true, "head": 0.3}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "it serves a pond, whose freeboard pond/freeboard judges"}}
	freeboard.excused == wanted with input as {"spillways": items}
		with data.limits as limits
}

test_excused_not_below_the_rim if {
	items := [good, {"subject": "other", "below_rim": false, "serves_pond": false, "head": 0.3}]
	freeboard.proved == {"good"} with input as {"spillways": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "it does not lie below the rim, which overflow/below_rim judges"}}
	freeboard.excused == wanted with input as {"spillways": items}
		with data.limits as limits
}
