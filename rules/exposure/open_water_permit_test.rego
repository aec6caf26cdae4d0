package greysill.exposure.open_water_permit_test

import rego.v2

import data.greysill.exposure.open_water_permit

permitted := {"subject": "permitted", "receives_greywater": true, "has_permit": true}

test_pass_permit_named if {
	open_water_permit.proved == {"permitted"} with input as {"open_water": [permitted]}
}

test_pass_no_greywater if {
	waters := [{"subject": "pond-1", "receives_greywater": false, "has_permit": false}]
	open_water_permit.proved == {"pond-1"} with input as {"open_water": waters}
}

test_fail_greywater_without_permit if {
	waters := [permitted, {"subject": "pond-1", "receives_greywater": true, "has_permit": false}]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
}

test_not_shown_receives_greywater if {
	waters := [permitted, {"subject": "pond-1", "has_permit": false}]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
}

test_not_shown_has_permit if {
	waters := [permitted, {"subject": "pond-1", "receives_greywater": true}]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
}
