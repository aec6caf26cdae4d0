package greysill.pond.ammonia_test

import rego.v2

import data.greysill.pond.ammonia

limits := {
	"unionized_ammonia": {"value": 4e-05},
}

good := {"subject": "good", "stocked": true, "unionized_ammonia_by_emerson": 1e-05}

test_pass_good if {
	items := [good]
	ammonia.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "other", "stocked": true, "unionized_ammonia_by_emerson": 4e-05}]
	ammonia.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_much if {
	items := [good, {"subject": "other", "stocked": true, "unionized_ammonia_by_emerson": 4.0001e-05}]
	ammonia.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	ammonia.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_deadly if {
	items := [good, {"subject": "other", "stocked": true, "unionized_ammonia_by_emerson": 0.002}]
	ammonia.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	ammonia.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_stocked if {
	items := [good, {"subject": "other", "unionized_ammonia_by_emerson": 1e-05}]
	ammonia.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	ammonia.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_unionized_ammonia_by_emerson if {
	items := [good, {"subject": "other", "stocked": true}]
	ammonia.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	ammonia.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_excused_no_fish if {
	items := [good, {"subject": "other", "stocked": false, "unionized_ammonia_by_emerson": 1e-05}]
	ammonia.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	ammonia.excused == {{"subject": "other", "reason": "no fish are drawn in it"}} with input as {"ponds": items}
		with data.limits as limits
}
