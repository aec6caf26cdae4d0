package greysill.bed.media_size_test

import rego.v2

import data.greysill.bed.media_size

limits := {
	"media_size_least": {"value": 0.013},
	"media_size_greatest": {"value": 0.038},
	"planting_media_size_least": {"value": 0.005},
	"planting_media_size_greatest": {"value": 0.02},
}

good := {"subject": "good", "lies": "under water", "size": 0.02}

test_pass_least_size_under_water if {
	items := [good, {"subject": "other", "lies": "under water", "size": 0.013}]
	media_size.proved == {"good", "other"} with input as {"layers": items}
		with data.limits as limits
}

test_pass_greatest_size_under_water if {
	items := [good, {"subject": "other", "lies": "under water", "size": 0.038}]
	media_size.proved == {"good", "other"} with input as {"layers": items}
		with data.limits as limits
}

test_pass_least_size_for_planting if {
	items := [good, {"subject": "other", "lies": "above the water", "size": 0.005}]
	media_size.proved == {"good", "other"} with input as {"layers": items}
		with data.limits as limits
}

test_pass_greatest_size_for_planting if {
	items := [good, {"subject": "other", "lies": "above the water", "size": 0.02}]
	media_size.proved == {"good", "other"} with input as {"layers": items}
		with data.limits as limits
}

test_fail_just_too_small_under_water if {
	items := [good, {"subject": "other", "lies": "under water", "size": 0.0129}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}

test_fail_just_too_large_under_water if {
	items := [good, {"subject": "other", "lies": "under water", "size": 0.0381}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}

test_fail_just_too_small_for_planting if {
	items := [good, {"subject": "other", "lies": "above the water", "size": 0.0049}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}

test_fail_just_too_large_for_planting if {
	items := [good, {"subject": "other", "lies": "above the water", "size": 0.0201}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}

test_fail_a_word_that_is_not_known if {
	items := [good, {"subject": "other", "lies": "beside the water", "size": 0.02}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}

test_not_shown_lies if {
	items := [good, {"subject": "other", "size": 0.02}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}

test_not_shown_size if {
	items := [good, {"subject": "other", "lies": "under water"}]
	media_size.proved == {"good"} with input as {"layers": items}
		with data.limits as limits
}
