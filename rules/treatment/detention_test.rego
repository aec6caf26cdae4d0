package greysill.treatment.detention_test

import rego.v2

import data.greysill.treatment.detention

limits := {"detention_least": {"value": 259200}}

good := {"subject": "good", "least_detention": 400000}

test_pass_long if {
	items := [good, {"subject": "other", "least_detention": 500000}]
	detention.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "least_detention": 259200}]
	detention.proved == {"good", "other"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_fail_just_too_short if {
	items := [good, {"subject": "other", "least_detention": 259199}]
	detention.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}

test_not_shown_least_detention if {
	items := [good, {"subject": "other"}]
	detention.proved == {"good"} with input as {"bed_flow": items}
		with data.limits as limits
}
