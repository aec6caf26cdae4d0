package greysill.flow.first_tier_bedrooms_test

import rego.v2

import data.greysill.flow.first_tier_bedrooms

limits := {"first_tier_bedrooms": {"value": 3}}

good := {"subject": "good", "bedrooms": 2}

test_pass_within if {
	first_tier_bedrooms.proved == {"good"} with input as {"system": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "bedrooms": 3}]
	first_tier_bedrooms.proved == {"limit"} with input as {"system": items}
		with data.limits as limits
}

test_fail_just_too_large if {
	items := [good, {"subject": "bad", "bedrooms": 4}]
	first_tier_bedrooms.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}

test_not_shown_bedrooms if {
	items := [good, {"subject": "unknown"}]
	first_tier_bedrooms.proved == {"good"} with input as {"system": items}
		with data.limits as limits
}
