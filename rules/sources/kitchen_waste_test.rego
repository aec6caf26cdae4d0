package greysill.sources.kitchen_waste_test

import rego.v2

import data.greysill.sources.kitchen_waste

test_pass_every_other_water if {
	inflows := [
		{"subject": "shower-1", "water": "greywater", "enters_train": true},
		{"subject": "toilet-1", "water": "toilet waste", "enters_train": true},
		{"subject": "roof-1", "water": "clear water", "enters_train": true},
		{"subject": "softener-1", "water": "brine", "enters_train": true},
	]
	kitchen_waste.proved == {"shower-1", "toilet-1", "roof-1", "softener-1"} with input as {"inflows": inflows}
}

test_pass_sink_that_drains_to_the_sewer if {
	inflows := [{"subject": "sink-1", "water": "kitchen waste", "enters_train": false, "ends_in_sewer": true}]
	kitchen_waste.proved == {"sink-1"} with input as {"inflows": inflows}
}

test_fail_sink_that_enters_the_train if {
	inflows := [
		{"subject": "sink-1", "water": "kitchen waste", "enters_train": true},
		{"subject": "shower-1", "water": "greywater", "enters_train": true},
	]
	kitchen_waste.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_fail_water_of_no_known_class if {
	inflows := [
		{"subject": "fixture-1", "water": "kitchen water", "enters_train": true},
		{"subject": "shower-1", "water": "greywater", "enters_train": true},
	]
	kitchen_waste.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_fail_sink_that_ends_elsewhere if {
	inflows := [
		{"subject": "sink-1", "water": "kitchen waste", "enters_train": false, "ends_in_sewer": false},
		{"subject": "shower-1", "water": "greywater", "enters_train": true, "ends_in_sewer": false},
	]
	kitchen_waste.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_fail_sink_to_the_sewer_through_the_train if {
	inflows := [
		{"subject": "sink-1", "water": "kitchen waste", "enters_train": true, "ends_in_sewer": true},
		{"subject": "shower-1", "water": "greywater", "enters_train": true, "ends_in_sewer": true},
	]
	kitchen_waste.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_not_shown_where_it_ends if {
	inflows := [
		{"subject": "sink-1", "water": "kitchen waste", "enters_train": false},
		{"subject": "shower-1", "water": "greywater"},
	]
	kitchen_waste.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_not_shown_where_it_drains if {
	inflows := [
		{"subject": "sink-1", "water": "kitchen waste"},
		{"subject": "shower-1", "water": "greywater"},
	]
	kitchen_waste.proved == {"shower-1"} with input as {"inflows": inflows}
}

test_not_shown_water if {
	inflows := [
		{"subject": "fixture-1", "enters_train": true},
		{"subject": "fixture-2", "enters_train": false, "ends_in_sewer": true},
	]
	kitchen_waste.proved == {"fixture-2"} with input as {"inflows": inflows}
}
