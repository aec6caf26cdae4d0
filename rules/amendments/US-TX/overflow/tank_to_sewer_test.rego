package greysill.overflow.tank_to_sewer_test

import rego.v2

import data.greysill.overflow.tank_to_sewer

good := {"subject": "good", "kind": "surge tank", "overflow_ends_in_sewer": true}

test_pass_tank_and_settling_basin if {
	items := [good, {"subject": "basin", "kind": "settling basin", "overflow_ends_in_sewer": true}]
	tank_to_sewer.proved == {"good", "basin"} with input as {"holdings": items}
	tank_to_sewer.excused == set() with input as {"holdings": items}
}

test_fail_another_end if {
	items := [good, {"subject": "bad", "kind": "surge tank", "overflow_ends_in_sewer": false}]
	tank_to_sewer.proved == {"good"} with input as {"holdings": items}
	tank_to_sewer.excused == set() with input as {"holdings": items}
}

test_not_shown_overflow_ends_in_sewer if {
	items := [good, {"subject": "other", "kind": "surge tank"}]
	tank_to_sewer.proved == {"good"} with input as {"holdings": items}
	tank_to_sewer.excused == set() with input as {"holdings": items}
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "overflow_ends_in_sewer": true}]
	tank_to_sewer.proved == {"good"} with input as {"holdings": items}
	tank_to_sewer.excused == set() with input as {"holdings": items}
}

test_excused_other_parts if {
	items := [
		good,
		{"subject": "bed", "kind": "planted gravel bed", "overflow_ends_in_sewer": false},
		{"subject": "basin", "kind": "mulch basin", "overflow_ends_in_sewer": false},
		{"subject": "trench", "kind": "infiltration trench", "overflow_ends_in_sewer": false},
		{"subject": "pond", "kind": "pond", "overflow_ends_in_sewer": false},
	]
	tank_to_sewer.proved == {"good"} with input as {"holdings": items}
	excused := tank_to_sewer.excused with input as {"holdings": items}
	{e.subject | some e in excused} == {"bed", "basin", "trench", "pond"}
}
