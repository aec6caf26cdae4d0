package greysill.flow.class_two_test

import rego.v2

import data.greysill.flow.class_two

limits := {
	"ontario_class_two_flow": {"value": 0.002},
	"ontario_class_two_units": {"value": 7},
}

good := {"subject": "good", "daily_flow_by_occupants": 0.001, "fixture_units_ipc": 4}

test_pass_small if {
	class_two.proved == {"good"} with input as {"demand": [good]}
		with data.limits as limits
}

test_pass_exactly_at_both_limits if {
	items := [{"subject": "limit", "daily_flow_by_occupants": 0.002, "fixture_units_ipc": 7}]
	class_two.proved == {"limit"} with input as {"demand": items}
		with data.limits as limits
}

test_fail_flow_just_too_great if {
	items := [good, {"subject": "bad", "daily_flow_by_occupants": 0.00201, "fixture_units_ipc": 4}]
	class_two.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
}

test_fail_one_unit_too_many if {
	items := [good, {"subject": "bad", "daily_flow_by_occupants": 0.001, "fixture_units_ipc": 8}]
	class_two.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
}

test_not_shown_flow if {
	items := [good, {"subject": "unknown", "fixture_units_ipc": 4}]
	class_two.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
}

test_not_shown_fixture_units if {
	items := [good, {"subject": "unknown", "daily_flow_by_occupants": 0.001}]
	class_two.proved == {"good"} with input as {"demand": items}
		with data.limits as limits
}
