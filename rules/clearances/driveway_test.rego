package greysill.clearances.driveway_test

import rego.v2

import data.greysill.clearances.driveway

pairs(items) := {"clearances": {"paving": items}}

pair(works, touches) := {"subject": $"{works} {touches}", "works": works, "touches": touches}

test_pass_apart if {
	items := [pair("field", false), pair("tank", false)]
	driveway.proved == {"field false", "tank false"} with input as pairs(items)
}

test_fail_touching if {
	items := [pair("field", true), pair("tank", true), pair("field", false)]
	driveway.proved == {"field false"} with input as pairs(items)
	driveway.excused == set() with input as pairs(items)
}

test_not_shown_touches if {
	items := [{"subject": "part", "works": "field"}, pair("field", false)]
	driveway.proved == {"field false"} with input as pairs(items)
	driveway.excused == set() with input as pairs(items)
}

test_not_shown_works if {
	items := [{"subject": "part", "touches": false}, pair("field", false)]
	driveway.proved == {"field false"} with input as pairs(items)
	driveway.excused == set() with input as pairs(items)
}

test_excused_touching_or_not if {
	items := [pair("pipe", true), pair("pipe", false), pair("fitting", true), pair("fitting", false), pair("field", true)]
	excused := driveway.excused with input as pairs(items)
	{e.subject | some e in excused} == {"pipe true", "pipe false", "fitting true", "fitting false"}
	driveway.proved == set() with input as pairs(items)
}
