package greysill.beds.area_test

import rego.v2

import data.greysill.beds.area

limits := {"tarn_bed_area": {"value": 5}}

good := {"subject": "good", "area": 6}

test_pass_large_enough if {
	area.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "area": 5}]
	area.proved == {"limit"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "area": 4.99}]
	area.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_area if {
	items := [good, {"subject": "unknown"}]
	area.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
