package greysill.drains.pipe_reaches_soil_test

import rego.v2

import data.greysill.drains.pipe_reaches_soil

good := {"subject": "good", "part_kind": "drain pipe", "meets": true}

test_pass_meets if {
	items := [good, {"subject": "overflow", "part_kind": "overflow pipe", "meets": true}]
	pipe_reaches_soil.proved == {"good", "overflow"} with input as {"gaps": items}
	pipe_reaches_soil.excused == set() with input as {"gaps": items}
}

test_fail_short if {
	items := [good, {"subject": "bad", "part_kind": "drain pipe", "meets": false}]
	pipe_reaches_soil.proved == {"good"} with input as {"gaps": items}
	pipe_reaches_soil.excused == set() with input as {"gaps": items}
}

test_not_shown_any_field if {
	items := [good, {"subject": "meets", "part_kind": "drain pipe"}, {"subject": "part_kind", "meets": true}]
	pipe_reaches_soil.proved == {"good"} with input as {"gaps": items}
	pipe_reaches_soil.excused == set() with input as {"gaps": items}
}

test_excused_what_is_no_pipe if {
	items := [good, {"subject": "tank", "part_kind": "surge tank", "meets": false}]
	pipe_reaches_soil.proved == {"good"} with input as {"gaps": items}
	excused := pipe_reaches_soil.excused with input as {"gaps": items}
	{e.subject | some e in excused} == {"tank"}
}
