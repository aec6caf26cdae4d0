package greysill.pond.embankment_top_test

import rego.v2

import data.greysill.pond.embankment_top

limits := {
	"embankment_top_width": {"value": 2},
}

good := {"subject": "good", "has_embankment": true, "embankment_top_width": 3}

test_pass_good if {
	items := [good]
	embankment_top.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "has_embankment": true, "embankment_top_width": 2}]
	embankment_top.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_narrow if {
	items := [good, {"subject": "other", "has_embankment": true, "embankment_top_width": 1.9999}]
	embankment_top.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_top.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_a_ridge if {
	items := [good, {"subject": "other", "has_embankment": true, "embankment_top_width": 0.2}]
	embankment_top.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_top.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_has_embankment if {
	items := [good, {"subject": "other", "embankment_top_width": 3}]
	embankment_top.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_top.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_embankment_top_width if {
	items := [good, {"subject": "other", "has_embankment": true}]
	embankment_top.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	embankment_top.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_excused_no_embankment if {
	items := [good, {"subject": "other", "has_embankment": false, "embankment_top_width": 3}]
	embankment_top.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "no embankment is drawn"}}
	embankment_top.excused == wanted with input as {"ponds": items}
		with data.limits as limits
}
