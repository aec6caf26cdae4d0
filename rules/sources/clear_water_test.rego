package greysill.sources.clear_water_test

import rego.v2

import data.greysill.sources.clear_water

test_pass_every_other_water if {
	inflows := [
		{"subject": "shower-1", "water": "greywater", "enters_at_or_above_bed": true},
		{"subject": "toilet-1", "water": "toilet waste", "enters_at_or_above_bed": true},
		{"subject": "sink-1", "water": "kitchen waste", "enters_at_or_above_bed": true},
		{"subject": "softener-1", "water": "brine", "enters_at_or_above_bed": true},
	]
	clear_water.proved == {"shower-1", "toilet-1", "sink-1", "softener-1"} with input as {"inflows": inflows}
}

test_pass_roof_drain_that_joins_below_the_bed if {
	inflows := [{"subject": "roof-1", "water": "clear water", "enters_at_or_above_bed": false}]
	clear_water.proved == {"roof-1"} with input as {"inflows": inflows}
}

test_fail_roof_drain_that_joins_above_the_bed if {
	inflows := [
		{"subject": "roof-1", "water": "clear water", "enters_at_or_above_bed": true},
		{"subject": "shower-1", "water": "greywater", "enters_at_or_above_bed": true},
	]
	clear_water.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_fail_water_of_no_known_class if {
	inflows := [
		{"subject": "fixture-1", "water": "clearwater", "enters_at_or_above_bed": true},
		{"subject": "shower-1", "water": "greywater", "enters_at_or_above_bed": true},
	]
	clear_water.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_not_shown_where_it_drains if {
	inflows := [
		{"subject": "roof-1", "water": "clear water"},
		{"subject": "shower-1", "water": "greywater"},
	]
	clear_water.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_not_shown_water if {
	inflows := [
		{"subject": "fixture-1", "enters_at_or_above_bed": true},
		{"subject": "fixture-2", "enters_at_or_above_bed": false},
	]
	clear_water.proved == {"fixture-2"} with input as {"inflows": inflows}
}
