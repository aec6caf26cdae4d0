package greysill.records.datum_test

import rego.v2

import data.greysill.records.datum

good := {"subject": "good", "datum": "door sill", "shows_north": true}

test_pass_both if {
	items := [good]
	datum.proved == {"good"} with input as {"plan": items}
}

test_fail_without_north if {
	items := [good, {"subject": "bad", "datum": "door sill", "shows_north": false}]
	datum.proved == {"good"} with input as {"plan": items}
}

test_fail_blank if {
	items := [good, {"subject": "bad", "datum": "", "shows_north": true}]
	datum.proved == {"good"} with input as {"plan": items}
}

test_not_shown_datum if {
	items := [good, {"subject": "unknown", "shows_north": true}]
	datum.proved == {"good"} with input as {"plan": items}
}

test_not_shown_shows_north if {
	items := [good, {"subject": "unknown", "datum": "door sill"}]
	datum.proved == {"good"} with input as {"plan": items}
}
