package greysill.exposure.childproof_lid_test

import rego.v2

import data.greysill.exposure.childproof_lid

good := {"subject": "good", "kind": "surge tank", "lies_open": false, "childproof": true}

test_pass_childproof if {
	childproof_lid.proved == {"good"} with input as {"open_water": [good]}
	childproof_lid.excused == set() with input as {"open_water": [good]}
}

test_fail_light_lid if {
	items := [good, {"subject": "bad", "kind": "surge tank", "lies_open": false, "childproof": false}]
	childproof_lid.proved == {"good"} with input as {"open_water": items}
	childproof_lid.excused == set() with input as {"open_water": items}
}

test_not_shown_any_field if {
	items := [
		good, {"subject": "lid", "kind": "surge tank", "lies_open": false}, {"subject": "cover", "kind": "settling basin", "childproof": true},
		{"subject": "kind", "lies_open": false, "childproof": true},
	]
	childproof_lid.proved == {"good"} with input as {"open_water": items}
	childproof_lid.excused == set() with input as {"open_water": items}
}

test_excused_what_lies_open_and_filters if {
	items := [
		good,
		{"subject": "pond", "kind": "pond", "lies_open": true, "childproof": false},
		{"subject": "filter", "kind": "filter", "lies_open": false, "childproof": true},
	]
	childproof_lid.proved == {"good"} with input as {"open_water": items}
	excused := childproof_lid.excused with input as {"open_water": items}
	{e.subject | some e in excused} == {"pond", "filter"}
}
