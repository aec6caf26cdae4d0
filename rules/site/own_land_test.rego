package greysill.site.own_land_test

import rego.v2

import data.greysill.site.own_land

inside := {"subject": "bed-1", "kind": "planted gravel bed", "inside_boundary": true}

test_pass_part_inside if {
	own_land.proved == {"bed-1"} with input as {"parts": [inside]}
}

test_pass_sewer_connection_inside if {
	parts := [{"subject": "sewer-1", "kind": "sewer connection", "inside_boundary": true}]
	own_land.proved == {"sewer-1"} with input as {"parts": parts}
	own_land.excused == set() with input as {"parts": parts}
}

test_fail_part_outside if {
	parts := [inside, {"subject": "basin-1", "kind": "mulch basin", "inside_boundary": false}]
	own_land.proved == {"bed-1"} with input as {"parts": parts}
	own_land.excused == set() with input as {"parts": parts}
}

test_fail_pipe_to_the_sewer_outside if {
	parts := [inside, {"subject": "pipe-1", "kind": "drain pipe", "inside_boundary": false}]
	own_land.proved == {"bed-1"} with input as {"parts": parts}
	own_land.excused == set() with input as {"parts": parts}
}

test_fail_septic_connection_outside if {
	parts := [inside, {"subject": "septic-1", "kind": "septic connection", "inside_boundary": false}]
	own_land.proved == {"bed-1"} with input as {"parts": parts}
	own_land.excused == set() with input as {"parts": parts}
}

test_not_shown_inside_boundary if {
	parts := [
		inside,
		{"subject": "basin-1", "kind": "mulch basin"},
		{"subject": "sewer-1", "kind": "sewer connection"},
	]
	own_land.proved == {"bed-1"} with input as {"parts": parts}
	own_land.excused == set() with input as {"parts": parts}
}

test_not_shown_kind if {
	parts := [inside, {"subject": "sewer-1", "inside_boundary": false}]
	own_land.proved == {"bed-1"} with input as {"parts": parts}
	own_land.excused == set() with input as {"parts": parts}
}

test_excused_sewer_connection_outside if {
	parts := [inside, {"subject": "sewer-1", "kind": "sewer connection", "inside_boundary": false}]
	own_land.proved == {"bed-1"} with input as {"parts": parts}
	excused := own_land.excused with input as {"parts": parts}
	{e.subject | some e in excused} == {"sewer-1"}
}
