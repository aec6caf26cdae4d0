package greysill.clearances.floodway_test

import rego.v2

import data.greysill.clearances.floodway

pairs(items) := {"clearances": {"floodway": items}}

pair(works, touches) := {"subject": $"{works} {touches}", "works": works, "touches": touches}

test_pass_apart if {
	items := [pair("field", false), pair("tank", false), pair("pipe", false), pair("fitting", false)]
	floodway.proved == {"field false", "tank false", "pipe false", "fitting false"} with input as pairs(items)
}

test_fail_touching if {
	items := [pair("field", true), pair("tank", true), pair("pipe", true), pair("fitting", true), pair("field", false)]
	floodway.proved == {"field false"} with input as pairs(items)
}

test_not_shown_touches if {
	items := [{"subject": "part", "works": "field"}, pair("field", false)]
	floodway.proved == {"field false"} with input as pairs(items)
}
