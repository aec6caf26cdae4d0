package greysill.pond.freeboard_test

import rego.v2

import data.greysill.pond.freeboard

limits := {
	"pond_freeboard": {"value": 0.3},
}

good := {"subject": "good", "freeboard": 0.5}

test_pass_good if {
	items := [good]
	freeboard.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "freeboard": 0.3}]
	freeboard.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_little if {
	items := [good, {"subject": "other", "freeboard": 0.2999}]
	freeboard.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_over_the_rim if {
	items := [good, {"subject": "other", "freeboard": -0.1}]
	freeboard.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_freeboard if {
	items := [good, {"subject": "other"}]
	freeboard.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}
