package greysill.construction.licensed_work_test

import rego.v2

import data.greysill.construction.licensed_work

good := {"subject": "electrical work", "named": true}

test_pass_named if {
	items := [good]
	licensed_work.proved == {"electrical work"} with input as {"licensed_work": items}
}

test_fail_left_out if {
	items := [good, {"subject": "bad", "named": false}]
	licensed_work.proved == {"electrical work"} with input as {"licensed_work": items}
}

test_not_shown_named if {
	items := [good, {"subject": "unknown"}]
	licensed_work.proved == {"electrical work"} with input as {"licensed_work": items}
}
