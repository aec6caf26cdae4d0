package greysill.records.services_shown_test

import rego.v2

import data.greysill.records.services_shown

good := {"subject": "good", "shows_services": true}

test_pass_listed if {
	items := [good]
	services_shown.proved == {"good"} with input as {"plan": items}
}

test_fail_not_listed if {
	items := [good, {"subject": "bad", "shows_services": false}]
	services_shown.proved == {"good"} with input as {"plan": items}
}

test_not_shown_shows_services if {
	items := [good, {"subject": "unknown"}]
	services_shown.proved == {"good"} with input as {"plan": items}
}
