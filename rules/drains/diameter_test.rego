package greysill.drains.diameter_test

import rego.v2

import data.greysill.drains.diameter

limits := {"drain_diameter": {"value": 0.05}}

good := {"subject": "pipe-1", "diameter": 0.08}

test_pass_wide if {
	items := [good]
	diameter.proved == {"pipe-1"} with input as {"pipes": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "diameter": 0.05}]
	diameter.proved == {"limit"} with input as {"pipes": items}
		with data.limits as limits
}

test_fail_just_too_narrow if {
	items := [good, {"subject": "bad", "diameter": 0.0499}]
	diameter.proved == {"pipe-1"} with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_diameter if {
	items := [good, {"subject": "unknown"}]
	diameter.proved == {"pipe-1"} with input as {"pipes": items}
		with data.limits as limits
}
