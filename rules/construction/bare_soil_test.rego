package greysill.construction.bare_soil_test

import rego.v2

import data.greysill.construction.bare_soil

good := {"subject": "good", "bare_soil_held": true}

test_pass_planned if {
	items := [good]
	bare_soil.proved == {"good"} with input as {"construction": items}
}

test_fail_not_planned if {
	items := [good, {"subject": "bad", "bare_soil_held": false}]
	bare_soil.proved == {"good"} with input as {"construction": items}
}

test_not_shown_bare_soil_held if {
	items := [good, {"subject": "unknown"}]
	bare_soil.proved == {"good"} with input as {"construction": items}
}
