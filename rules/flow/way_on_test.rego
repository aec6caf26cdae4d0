package greysill.flow.way_on_test

import rego.v2

import data.greysill.flow.way_on

good := {"subject": "pipe-1", "kind": "drain pipe", "drains_on": true}

test_pass_part_that_drains_on if {
	way_on.proved == {"pipe-1"} with input as {"parts": [good]}
}

test_pass_basin_that_drains_on if {
	parts := [{"subject": "basin-1", "kind": "mulch basin", "drains_on": true}]
	way_on.proved == {"basin-1"} with input as {"parts": parts}
	way_on.excused == set() with input as {"parts": parts}
}

test_fail_part_without_a_way_on if {
	parts := [good, {"subject": "bed-1", "kind": "planted gravel bed", "drains_on": false}]
	way_on.proved == {"pipe-1"} with input as {"parts": parts}
	way_on.excused == set() with input as {"parts": parts}
}

test_fail_pond_without_a_way_on if {
	parts := [good, {"subject": "pond-1", "kind": "pond", "drains_on": false}]
	way_on.proved == {"pipe-1"} with input as {"parts": parts}
	way_on.excused == set() with input as {"parts": parts}
}

test_not_shown_drains_on if {
	parts := [good, {"subject": "bed-1", "kind": "planted gravel bed"}, {"subject": "basin-1", "kind": "mulch basin"}]
	way_on.proved == {"pipe-1"} with input as {"parts": parts}
	way_on.excused == set() with input as {"parts": parts}
}

test_not_shown_kind if {
	parts := [good, {"subject": "part-1", "drains_on": false}]
	way_on.proved == {"pipe-1"} with input as {"parts": parts}
	way_on.excused == set() with input as {"parts": parts}
}

test_excused_where_a_way_may_end if {
	parts := [
		good,
		{"subject": "sewer-1", "kind": "sewer connection", "drains_on": false},
		{"subject": "septic-1", "kind": "septic connection", "drains_on": false},
		{"subject": "basin-1", "kind": "mulch basin", "drains_on": false},
		{"subject": "trench-1", "kind": "infiltration trench", "drains_on": false},
	]
	way_on.proved == {"pipe-1"} with input as {"parts": parts}
	excused := way_on.excused with input as {"parts": parts}
	{e.subject | some e in excused} == {"sewer-1", "septic-1", "basin-1", "trench-1"}
}
