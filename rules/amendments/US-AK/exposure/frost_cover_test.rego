package greysill.exposure.frost_cover_test

import rego.v2

import data.greysill.exposure.frost_cover

limits := {"frost_cover_anywhere": {"value": 1}}

good := {"subject": "good", "cover": 2}

test_pass_within if {
	frost_cover.proved == {"good"} with input as {"discharges": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "cover": 1}]
	frost_cover.proved == {"limit"} with input as {"discharges": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "cover": 0.99}]
	frost_cover.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
}

test_not_shown_cover if {
	items := [good, {"subject": "unknown"}]
	frost_cover.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
}
