package greysill.sources.safe_end_test

import rego.v2

import data.greysill.sources.safe_end

good := {"subject": "shower-1", "water": "greywater", "ends_safely": true}

test_pass_every_water_of_the_house if {
	inflows := [
		good,
		{"subject": "toilet-1", "water": "toilet waste", "ends_safely": true},
		{"subject": "sink-1", "water": "kitchen waste", "ends_safely": true},
		{"subject": "softener-1", "water": "brine", "ends_safely": true},
	]
	safe_end.proved == {"shower-1", "toilet-1", "sink-1", "softener-1"} with input as {"inflows": inflows}
	safe_end.excused == set() with input as {"inflows": inflows}
}

test_fail_washer_to_a_creek if {
	inflows := [good, {"subject": "washer-1", "water": "greywater", "ends_safely": false}]
	safe_end.proved == {"shower-1"} with input as {"inflows": inflows}
	safe_end.excused == set() with input as {"inflows": inflows}
}

test_fail_water_of_no_known_class if {
	inflows := [good, {"subject": "fixture-1", "water": "grey water", "ends_safely": true}]
	safe_end.proved == {"shower-1"} with input as {"inflows": inflows}
	safe_end.excused == set() with input as {"inflows": inflows}
}

test_not_shown_where_it_ends if {
	inflows := [good, {"subject": "toilet-1", "water": "toilet waste"}]
	safe_end.proved == {"shower-1"} with input as {"inflows": inflows}
	safe_end.excused == set() with input as {"inflows": inflows}
}

test_not_shown_water if {
	inflows := [good, {"subject": "fixture-1", "ends_safely": true}, {"subject": "fixture-2", "ends_safely": false}]
	safe_end.proved == {"shower-1"} with input as {"inflows": inflows}
	safe_end.excused == set() with input as {"inflows": inflows}
}

test_excused_clear_water_wherever_it_ends if {
	inflows := [
		good,
		{"subject": "roof-1", "water": "clear water", "ends_safely": false},
		{"subject": "roof-2", "water": "clear water", "ends_safely": true},
		{"subject": "sump-1", "water": "clear water"},
	]
	safe_end.proved == {"shower-1"} with input as {"inflows": inflows}
	excused := safe_end.excused with input as {"inflows": inflows}
	{e.subject | some e in excused} == {"roof-1", "roof-2", "sump-1"}
}
