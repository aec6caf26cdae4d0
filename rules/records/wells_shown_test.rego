package greysill.records.wells_shown_test

import rego.v2

import data.greysill.records.wells_shown

limits := {"wells_shown_within": {"value": 50}}

good := {"subject": "good", "wells_shown_within": 80}

test_pass_far if {
	items := [good]
	wells_shown.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "wells_shown_within": 50}]
	wells_shown.proved == {"limit"} with input as {"plan": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "wells_shown_within": 49.99}]
	wells_shown.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
}

test_not_shown_wells_shown_within if {
	items := [good, {"subject": "unknown"}]
	wells_shown.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
}
