package greysill.sources.hazardous_chemicals_test

import rego.v2

import data.greysill.sources.hazardous_chemicals

clean := {"subject": "shower-1", "water": "greywater", "hazardous_chemicals": false, "enters_train": true}

test_pass_no_chemicals if {
	hazardous_chemicals.proved == {"shower-1"} with input as {"inflows": [clean]}
}

test_pass_chemicals_kept_out_of_the_train if {
	inflows := [{"subject": "tub-1", "water": "greywater", "hazardous_chemicals": true, "enters_train": false}]
	hazardous_chemicals.proved == {"tub-1"} with input as {"inflows": inflows}
}

test_fail_chemicals_into_the_train if {
	inflows := [clean, {"subject": "tub-1", "water": "greywater", "hazardous_chemicals": true, "enters_train": true}]
	hazardous_chemicals.proved == {"shower-1"} with input as {"inflows": inflows}
	hazardous_chemicals.excused == set() with input as {"inflows": inflows}
}

test_not_shown_hazardous_chemicals if {
	inflows := [clean, {"subject": "tub-1", "water": "greywater", "enters_train": true}]
	hazardous_chemicals.proved == {"shower-1"} with input as {"inflows": inflows}
	hazardous_chemicals.excused == set() with input as {"inflows": inflows}
}

test_not_shown_enters_train if {
	inflows := [clean, {"subject": "tub-1", "water": "greywater", "hazardous_chemicals": true}]
	hazardous_chemicals.proved == {"shower-1"} with input as {"inflows": inflows}
	hazardous_chemicals.excused == set() with input as {"inflows": inflows}
}

test_not_shown_water if {
	inflows := [clean, {"subject": "fixture-1", "hazardous_chemicals": false, "enters_train": false}]
	hazardous_chemicals.proved == {"shower-1"} with input as {"inflows": inflows}
	hazardous_chemicals.excused == set() with input as {"inflows": inflows}
}

test_excused_other_waters if {
	inflows := [
		{"subject": "toilet-1", "water": "toilet waste", "enters_train": true},
		{"subject": "sink-1", "water": "kitchen waste", "enters_train": true},
		{"subject": "roof-1", "water": "clear water", "enters_train": true},
		{"subject": "softener-1", "water": "brine", "enters_train": true},
		clean,
	]
	excused := hazardous_chemicals.excused with input as {"inflows": inflows}
	{e.subject | some e in excused} == {"toilet-1", "sink-1", "roof-1", "softener-1"}
	hazardous_chemicals.proved == {"shower-1"} with input as {"inflows": inflows}
}
