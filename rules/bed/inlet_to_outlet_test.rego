package greysill.bed.inlet_to_outlet_test

import rego.v2

import data.greysill.bed.inlet_to_outlet

limits := {"course_share": {"value": 0.7}}

good := {"subject": "good", "course_share": 0.9}

test_pass_from_end_to_end if {
	inlet_to_outlet.proved == {"good"} with input as {"bed_flow": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	inlet_to_outlet.proved == {"limit"} with input as {"bed_flow": [{"subject": "limit", "course_share": 0.7}]}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "course_share": 0.6999}]
	inlet_to_outlet.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_not_shown_course_share if {
	inlet_to_outlet.proved == {"good"} with input as {"bed_flow": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
