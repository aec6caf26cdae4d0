package greysill.records.labelled_test

import rego.v2

import data.greysill.records.labelled

good := {"subject": "good", "kind": "surge tank", "labelled": true}

test_pass_labelled if {
	items := [good, {"subject": "filter", "kind": "filter", "labelled": true}, {"subject": "basin", "kind": "settling basin", "labelled": true}]
	labelled.proved == {"good", "filter", "basin"} with input as {"upkeep": items}
	labelled.excused == set() with input as {"upkeep": items}
}

test_fail_not_labelled if {
	items := [good, {"subject": "bad", "kind": "surge tank", "labelled": false}]
	labelled.proved == {"good"} with input as {"upkeep": items}
	labelled.excused == set() with input as {"upkeep": items}
}

test_not_shown_labelled if {
	items := [good, {"subject": "unknown", "kind": "surge tank"}]
	labelled.proved == {"good"} with input as {"upkeep": items}
	labelled.excused == set() with input as {"upkeep": items}
}

test_not_shown_kind if {
	items := [good, {"subject": "unknown", "labelled": true}]
	labelled.proved == {"good"} with input as {"upkeep": items}
	labelled.excused == set() with input as {"upkeep": items}
}

test_excused_without_a_lid if {
	items := [good, {"subject": "pond", "kind": "pond"}]
	labelled.proved == {"good"} with input as {"upkeep": items}
	excused := labelled.excused with input as {"upkeep": items}
	{e.subject | some e in excused} == {"pond"}
}

test_excused_diverters if {
	items := [good, {"subject": "diverter", "kind": "diverter", "labelled": false}]
	labelled.proved == {"good"} with input as {"upkeep": items}
	excused := labelled.excused with input as {"upkeep": items}
	{e.subject | some e in excused} == {"diverter"}
}
