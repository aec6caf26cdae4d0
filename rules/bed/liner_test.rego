package greysill.bed.liner_test

import rego.v2

import data.greysill.bed.liner

limits := {"liner_thickness": {"value": 0.00076}}

good := {"subject": "good", "liner_thickness": 0.001}

test_pass_thick if {
	items := [good, {"subject": "other", "liner_thickness": 0.0011}]
	liner.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "liner_thickness": 0.00076}]
	liner.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_thin if {
	items := [good, {"subject": "other", "liner_thickness": 0.000759}]
	liner.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_liner_thickness if {
	items := [good, {"subject": "other"}]
	liner.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
