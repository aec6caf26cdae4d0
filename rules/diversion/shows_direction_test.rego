package greysill.diversion.shows_direction_test

import rego.v2

import data.greysill.diversion.shows_direction

good := {"subject": "diverter-1", "shows_direction": true}

test_pass_shows_direction if {
	shows_direction.proved == {"diverter-1"} with input as {"diverters": [good]}
}

test_fail_not_shows_direction if {
	diverters := [good, {"subject": "diverter-2", "shows_direction": false}]
	shows_direction.proved == {"diverter-1"} with input as {"diverters": diverters}
}

test_not_shown_shows_direction if {
	diverters := [good, {"subject": "diverter-2"}]
	shows_direction.proved == {"diverter-1"} with input as {"diverters": diverters}
}
