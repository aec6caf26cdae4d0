package greysill.site.groundwater_test

import rego.v2

import data.greysill.site.groundwater

limits := {"bottom_above_groundwater": {"value": 1.2}}

basin(height) := {"subject": $"basin at {height}", "above_groundwater": height}

test_pass_far_above if {
	groundwater.proved == {"basin at 3"} with input as {"soakage": [basin(3)]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	groundwater.proved == {"basin at 1.2"} with input as {"soakage": [basin(1.2)]}
		with data.limits as limits
}

test_fail_just_too_low if {
	groundwater.proved == {"basin at 3"} with input as {"soakage": [basin(3), basin(1.1999)]}
		with data.limits as limits
}

test_fail_reaches_into_it if {
	groundwater.proved == {"basin at 3"} with input as {"soakage": [basin(3), basin(-0.5)]}
		with data.limits as limits
}

test_not_shown_above_groundwater if {
	groundwater.proved == {"basin at 3"} with input as {"soakage": [basin(3), {"subject": "basin"}]}
		with data.limits as limits
}
