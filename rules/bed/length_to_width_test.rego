package greysill.bed.length_to_width_test

import rego.v2

import data.greysill.bed.length_to_width

limits := {
	"length_to_width_least": {"value": 0.4},
	"length_to_width_greatest": {"value": 4},
}

good := {"subject": "good", "length_to_width": 2}

test_pass_exactly_at_the_least if {
	items := [good, {"subject": "other", "length_to_width": 0.4}]
	length_to_width.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_the_greatest if {
	items := [good, {"subject": "other", "length_to_width": 4}]
	length_to_width.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_fail_just_too_short if {
	items := [good, {"subject": "other", "length_to_width": 0.399}]
	length_to_width.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_fail_just_too_long if {
	items := [good, {"subject": "other", "length_to_width": 4.001}]
	length_to_width.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_not_shown_length_to_width if {
	items := [good, {"subject": "other"}]
	length_to_width.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}
