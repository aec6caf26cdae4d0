package greysill.sources.clear_water_test

import rego.v2

import data.greysill.sources.clear_water

test_pass_every_other_water if {
	inflows := [
		{"subject": "shower-1", "water": "greywater", "joins_untreated": true},
		{"subject": "toilet-1", "water": "toilet waste", "joins_untreated": true},
		{"subject": "sink-1", "water": "kitchen waste", "joins_untreated": true},
		{"subject": "softener-1", "water": "brine", "joins_untreated": true},
	]
	clear_water.proved == {"shower-1", "toilet-1", "sink-1", "softener-1"} with input as {"inflows": inflows}
}

test_pass_roof_drain_that_joins_below_the_bed if {
	inflows := [{"subject": "roof-1", "water": "clear water", "joins_untreated": false}]
	clear_water.proved == {"roof-1"} with input as {"inflows": inflows}
}

test_fail_roof_drain_that_joins_untreated_greywater if {
	inflows := [
		{"subject": "roof-1", "water": "clear water", "joins_untreated": true},
		{"subject": "shower-1", "water": "greywater", "joins_untreated": true},
	]
	clear_water.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_fail_water_of_no_known_class if {
	inflows := [
		{"subject": "fixture-1", "water": "clearwater", "joins_untreated": true},
		{"subject": "shower-1", "water": "greywater", "joins_untreated": true},
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
		{"subject": "fixture-1", "joins_untreated": true},
		{"subject": "fixture-2", "joins_untreated": false},
	]
	clear_water.proved == {"fixture-2"} with input as {"inflows": inflows}
}
