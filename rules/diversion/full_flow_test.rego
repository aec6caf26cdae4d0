package greysill.diversion.full_flow_test

import rego.v2

import data.greysill.diversion.full_flow

limits := {"second_route_width": {"value": 1}}

diverter(ratio) := {"subject": $"diverter at {ratio}", "second_to_first": ratio, "second_route": "diverter → sewer-1"}

test_pass_wider if {
	full_flow.proved == {"diverter at 1.5"} with input as {"diverters": [diverter(1.5)]}
		with data.limits as limits
}

test_pass_exactly_as_wide if {
	full_flow.proved == {"diverter at 1"} with input as {"diverters": [diverter(1)]}
		with data.limits as limits
}

test_fail_just_narrower if {
	diverters := [diverter(1), diverter(0.999)]
	full_flow.proved == {"diverter at 1"} with input as {"diverters": diverters}
		with data.limits as limits
	full_flow.excused == set() with input as {"diverters": diverters}
		with data.limits as limits
}

test_not_shown_width if {
	diverters := [diverter(1), {"subject": "another", "second_route": "diverter → sewer-1"}]
	full_flow.proved == {"diverter at 1"} with input as {"diverters": diverters}
		with data.limits as limits
	full_flow.excused == set() with input as {"diverters": diverters}
		with data.limits as limits
}

test_not_shown_second_route if {
	diverters := [diverter(1), {"subject": "another", "second_to_first": 0.5}]
	full_flow.proved == {"diverter at 1"} with input as {"diverters": diverters}
		with data.limits as limits
	full_flow.excused == set() with input as {"diverters": diverters}
		with data.limits as limits
}

test_excused_no_second_route if {
	diverters := [diverter(1), {"subject": "another", "second_route": "none"}]
	full_flow.proved == {"diverter at 1"} with input as {"diverters": diverters}
		with data.limits as limits
	excused := full_flow.excused with input as {"diverters": diverters}
		with data.limits as limits
	{e.subject | some e in excused} == {"another"}
}
