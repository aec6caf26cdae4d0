package greysill.bed.media_depth_test

import rego.v2

import data.greysill.bed.media_depth

limits := {
	"media_depth_least": {"value": 0.4},
	"media_depth_greatest": {"value": 0.8},
}

good := {"subject": "good", "least_depth": 0.5, "greatest_depth": 0.6}

test_pass_between_the_limits if {
	media_depth.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_both_limits if {
	beds := [{"subject": "bed-1", "least_depth": 0.4, "greatest_depth": 0.8}]
	media_depth.proved == {"bed-1"} with input as {"beds": beds}
		with data.limits as limits
}

test_fail_just_too_thin_somewhere if {
	beds := [good, {"subject": "bed-1", "least_depth": 0.3999, "greatest_depth": 0.6}]
	media_depth.proved == {"good"} with input as {"beds": beds}
		with data.limits as limits
}

test_fail_just_too_deep_somewhere if {
	beds := [good, {"subject": "bed-1", "least_depth": 0.5, "greatest_depth": 0.8001}]
	media_depth.proved == {"good"} with input as {"beds": beds}
		with data.limits as limits
}

test_fail_too_thin_and_too_deep if {
	beds := [good, {"subject": "bed-1", "least_depth": 0.1, "greatest_depth": 0.9}]
	media_depth.proved == {"good"} with input as {"beds": beds}
		with data.limits as limits
}

test_not_shown_depth_least if {
	beds := [good, {"subject": "bed-1", "greatest_depth": 0.6}]
	media_depth.proved == {"good"} with input as {"beds": beds}
		with data.limits as limits
}

test_not_shown_depth_greatest if {
	beds := [good, {"subject": "bed-1", "least_depth": 0.5}]
	media_depth.proved == {"good"} with input as {"beds": beds}
		with data.limits as limits
}
