package greysill.overflow.to_sewer_test

import rego.v2

import data.greysill.overflow.to_sewer

good := {"subject": "good", "kind": "planted gravel bed", "has_overflow": true, "overflow_ends_in_sewer": true}

test_pass_every_kind if {
	kinds := ["surge tank", "planted gravel bed", "settling basin"]
	items := [object.union(good, {"subject": k, "kind": k}) | some k in kinds]
	to_sewer.proved == {k | some k in kinds} with input as {"holdings": items}
	to_sewer.excused == set() with input as {"holdings": items}
}

test_fail_overflow_into_a_basin if {
	items := [good, object.union(good, {"subject": "bad", "overflow_ends_in_sewer": false})]
	to_sewer.proved == {"good"} with input as {"holdings": items}
	to_sewer.excused == set() with input as {"holdings": items}
}

test_fail_no_overflow if {
	items := [good, object.union(good, {"subject": "bad", "has_overflow": false})]
	to_sewer.proved == {"good"} with input as {"holdings": items}
}

test_not_shown_any_field if {
	items := array.concat([good], [object.remove(object.union(good, {"subject": "unknown"}), [f]) | some f in ["kind", "has_overflow", "overflow_ends_in_sewer"]])
	to_sewer.proved == {"good"} with input as {"holdings": items}
	to_sewer.excused == set() with input as {"holdings": items}
}

test_excused_basins_trenches_and_ponds if {
	items := [good, {"subject": "pond", "kind": "pond", "has_overflow": true, "overflow_ends_in_sewer": false}, {"subject": "basin", "kind": "mulch basin", "has_overflow": true, "overflow_ends_in_sewer": false}, {"subject": "trench", "kind": "infiltration trench", "has_overflow": true, "overflow_ends_in_sewer": false}]
	to_sewer.proved == {"good"} with input as {"holdings": items}
	excused := to_sewer.excused with input as {"holdings": items}
	{e.subject | some e in excused} == {"basin", "trench", "pond"}
}
