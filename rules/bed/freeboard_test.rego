package greysill.bed.freeboard_test

import rego.v2

import data.greysill.bed.freeboard

limits := {"bed_freeboard": {"value": 0.15}}

good := {"subject": "good", "freeboard": 0.2}

test_pass_high if {
	items := [good, {"subject": "other", "freeboard": 0.4}]
	freeboard.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "freeboard": 0.15}]
	freeboard.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_low if {
	items := [good, {"subject": "other", "freeboard": 0.1499}]
	freeboard.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_below_the_water if {
	items := [good, {"subject": "other", "freeboard": -0.1}]
	freeboard.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_freeboard if {
	items := [good, {"subject": "other"}]
	freeboard.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
