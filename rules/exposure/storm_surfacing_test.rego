package greysill.exposure.storm_surfacing_test

import rego.v2

import data.greysill.exposure.storm_surfacing

limits := {"storm_rise_share": {"value": 1}}

good := {"subject": "good", "storm_rise_share": 0.5}

test_pass_little_rise if {
	items := [good, {"subject": "other", "storm_rise_share": 0.2}]
	storm_surfacing.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "storm_rise_share": 1}]
	storm_surfacing.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_above_the_gravel if {
	items := [good, {"subject": "other", "storm_rise_share": 1.001}]
	storm_surfacing.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_storm_rise_share if {
	items := [good, {"subject": "other"}]
	storm_surfacing.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
