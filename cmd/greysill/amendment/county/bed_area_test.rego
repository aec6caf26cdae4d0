package greysill.county.bed_area_test

import rego.v2

import data.greysill.county.bed_area

# Numbers are in SI units here: m².
limits := {"county_bed_area": {"value": 4}}

good := {"subject": "good", "area": 5}

test_pass_large_enough if {
	bed_area.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "area": 4}]
	bed_area.proved == {"limit"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "area": 3.99}]
	bed_area.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_area if {
	items := [good, {"subject": "unknown"}]
	bed_area.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
