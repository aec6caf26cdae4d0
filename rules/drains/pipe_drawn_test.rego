package greysill.drains.pipe_drawn_test

import rego.v2

import data.greysill.drains.pipe_drawn

good := {"subject": "good", "part_kind": "diverter", "meets": true, "indoors": false}

test_pass_meets if {
	items := [good, {"subject": "in the house", "part_kind": "surge tank", "meets": true, "indoors": true}]
	pipe_drawn.proved == {"good", "in the house"} with input as {"gaps": items}
	pipe_drawn.excused == set() with input as {"gaps": items}
}

test_fail_apart if {
	items := [good, {"subject": "bad", "part_kind": "diverter", "meets": false, "indoors": false}]
	pipe_drawn.proved == {"good"} with input as {"gaps": items}
	pipe_drawn.excused == set() with input as {"gaps": items}
}

test_not_shown_any_field if {
	items := [
		good,
		{"subject": "part_kind", "meets": true, "indoors": false},
		{"subject": "meets", "part_kind": "diverter", "indoors": true},
		{"subject": "indoors", "part_kind": "diverter", "meets": false},
	]
	pipe_drawn.proved == {"good"} with input as {"gaps": items}
	pipe_drawn.excused == set() with input as {"gaps": items}
}

test_excused_indoors_and_pipes if {
	items := [
		good,
		{"subject": "house", "part_kind": "diverter", "meets": false, "indoors": true},
		{"subject": "pipe", "part_kind": "drain pipe", "meets": true, "indoors": false},
		{"subject": "overflow", "part_kind": "overflow pipe", "meets": false, "indoors": false},
	]
	pipe_drawn.proved == {"good"} with input as {"gaps": items}
	excused := pipe_drawn.excused with input as {"gaps": items}
	{e.subject | some e in excused} == {"house", "pipe", "overflow"}
}
