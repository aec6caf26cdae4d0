package greysill.settling.surface_loading_test

import rego.v2

import data.greysill.settling.surface_loading

limits := {
	"settling_surface_loading": {"value": 0.002},
}

good := {"subject": "good", "kind": "settling basin", "surge_surface_loading": 0.001, "surface_loading": 0.0001}

test_pass_good if {
	items := [good]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [
		{"subject": "other", "kind": "settling basin", "surge_surface_loading": 0.002, "surface_loading": 0.002},
	]
	surface_loading.proved == {"other"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_surge_just_too_fast if {
	items := [
		good,
		{"subject": "other", "kind": "settling basin", "surge_surface_loading": 0.002001, "surface_loading": 0.0001},
	]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	surface_loading.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_daily_flow_too_fast if {
	items := [
		good,
		{"subject": "other", "kind": "settling basin", "surge_surface_loading": 0.001, "surface_loading": 0.002001},
	]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	surface_loading.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_fail_both_too_fast if {
	items := [
		good,
		{"subject": "other", "kind": "settling basin", "surge_surface_loading": 0.1, "surface_loading": 0.1},
	]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	surface_loading.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "surge_surface_loading": 0.001, "surface_loading": 0.0001}]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	surface_loading.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_surge_surface_loading if {
	items := [good, {"subject": "other", "kind": "settling basin", "surface_loading": 0.0001}]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	surface_loading.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_surface_loading if {
	items := [good, {"subject": "other", "kind": "settling basin", "surge_surface_loading": 0.001}]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	surface_loading.excused == set() with input as {"settling": items}
		with data.limits as limits
}

test_excused_surge_tank if {
	items := [
		good,
		{"subject": "other", "kind": "surge tank", "surge_surface_loading": 0.001, "surface_loading": 0.0001},
	]
	surface_loading.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
	wanted := {{"subject": "other", "reason": "a surge tank evens out the flow and is not there to settle"}}
	surface_loading.excused == wanted with input as {"settling": items}
		with data.limits as limits
}
