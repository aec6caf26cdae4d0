package greysill.clearances.edible_garden_test

import rego.v2

import data.greysill.clearances.edible_garden

pairs(items) := {"clearances": {"edible_garden": items}}

pair(works, touches) := {"subject": $"{works} {touches}", "works": works, "touches": touches}

test_pass_apart if {
	items := [pair("field", false)]
	edible_garden.proved == {"field false"} with input as pairs(items)
}

test_fail_touching if {
	items := [pair("field", true), pair("field", false)]
	edible_garden.proved == {"field false"} with input as pairs(items)
	edible_garden.excused == set() with input as pairs(items)
}

test_not_shown_touches if {
	items := [{"subject": "part", "works": "field"}, pair("field", false)]
	edible_garden.proved == {"field false"} with input as pairs(items)
	edible_garden.excused == set() with input as pairs(items)
}

test_not_shown_works if {
	items := [{"subject": "part", "touches": false}, pair("field", false)]
	edible_garden.proved == {"field false"} with input as pairs(items)
	edible_garden.excused == set() with input as pairs(items)
}

test_excused_touching_or_not if {
	items := [pair("tank", true), pair("tank", false), pair("pipe", true), pair("pipe", false), pair("fitting", true), pair("fitting", false), pair("field", true)]
	excused := edible_garden.excused with input as pairs(items)
	{e.subject | some e in excused} == {"tank true", "tank false", "pipe true", "pipe false", "fitting true", "fitting false"}
	edible_garden.proved == set() with input as pairs(items)
}
