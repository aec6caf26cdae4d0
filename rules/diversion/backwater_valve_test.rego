package greysill.diversion.backwater_valve_test

import rego.v2

import data.greysill.diversion.backwater_valve

limits := {"above_surcharge": {"value": 0.1}}

guarded := {"subject": "guarded", "backwater": "valve or air gap"}

way(height) := {"subject": $"at {height}", "backwater": "none", "above_surcharge": height}

test_pass_valve if {
	ways := [guarded, {"subject": "low", "backwater": "valve or air gap", "above_surcharge": -2}]
	backwater_valve.proved == {"guarded", "low"} with input as {"sewer_ways": ways}
		with data.limits as limits
}

test_pass_exactly_high_enough if {
	backwater_valve.proved == {"at 0.1"} with input as {"sewer_ways": [way(0.1)]}
		with data.limits as limits
}

test_fail_just_too_low if {
	backwater_valve.proved == {"guarded"} with input as {"sewer_ways": [guarded, way(0.0999)]}
		with data.limits as limits
}

test_fail_below_the_surcharge if {
	backwater_valve.proved == {"guarded"} with input as {"sewer_ways": [guarded, way(-1)]}
		with data.limits as limits
}

test_not_shown_above_surcharge if {
	ways := [guarded, {"subject": "no valve", "backwater": "none"}]
	backwater_valve.proved == {"guarded"} with input as {"sewer_ways": ways}
		with data.limits as limits
}

test_not_shown_backwater if {
	ways := [guarded, {"subject": "low", "above_surcharge": -1}, {"subject": "unknown"}]
	backwater_valve.proved == {"guarded"} with input as {"sewer_ways": ways}
		with data.limits as limits
}
