package greysill.sources.soiled_nappies_test

import rego.v2

import data.greysill.sources.soiled_nappies

clean := {"subject": "washer-1", "soiled_nappies": false, "enters_train": true}

test_pass_no_nappies if {
	soiled_nappies.proved == {"washer-1"} with input as {"inflows": [clean]}
}

test_pass_nappies_to_the_sewer if {
	inflows := [{"subject": "washer-2", "soiled_nappies": true, "enters_train": false}]
	soiled_nappies.proved == {"washer-2"} with input as {"inflows": inflows}
}

test_fail_nappies_into_the_train if {
	inflows := [clean, {"subject": "washer-2", "soiled_nappies": true, "enters_train": true}]
	soiled_nappies.proved == {"washer-1"} with input as {"inflows": inflows}
}

test_not_shown_soiled_nappies if {
	inflows := [clean, {"subject": "washer-2", "enters_train": true}]
	soiled_nappies.proved == {"washer-1"} with input as {"inflows": inflows}
}

test_not_shown_enters_train if {
	inflows := [clean, {"subject": "washer-2", "soiled_nappies": true}]
	soiled_nappies.proved == {"washer-1"} with input as {"inflows": inflows}
}
