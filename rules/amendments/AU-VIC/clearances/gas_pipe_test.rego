package greysill.clearances.gas_pipe_test

import rego.v2

import data.greysill.clearances.gas_pipe

limits := {"victoria_gas_from_field": {"value": 8}}

good := {"subject": "good", "works": "field", "feature_kind": "gas", "distance": 9}

pairs(items) := {"clearances": {"buried_line": items}}

test_pass_far_enough if {
	gas_pipe.proved == {"good"} with input as pairs([good])
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "feature_kind": "gas", "distance": 8}]
	gas_pipe.proved == {"limit"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "works": "field", "feature_kind": "gas", "distance": 7.999}]
	gas_pipe.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	gas_pipe.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field", "feature_kind": "gas"}]
	gas_pipe.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	gas_pipe.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "feature_kind": "gas", "distance": 9}]
	gas_pipe.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	gas_pipe.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_not_shown_feature_kind if {
	items := [good, {"subject": "unknown", "works": "field", "distance": 9}]
	gas_pipe.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	gas_pipe.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_tank if {
	items := [good, {"subject": "tank", "works": "tank", "feature_kind": "gas", "distance": 1}]
	gas_pipe.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	gas_pipe.excused == {{"subject": "tank", "reason": "the distance is that of a field"}} with input as pairs(items)
		with data.limits as limits
}

test_excused_line_voltage if {
	items := [good, {"subject": "other", "works": "field", "feature_kind": "line voltage", "distance": 1}]
	gas_pipe.proved == {"good"} with input as pairs(items)
		with data.limits as limits
	gas_pipe.excused == {{"subject": "other", "reason": "it is no gas pipe"}} with input as pairs(items)
		with data.limits as limits
}
