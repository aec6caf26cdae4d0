package greysill.drains.never_narrower_test

import rego.v2

import data.greysill.drains.never_narrower

good := {"subject": "pipe-1 to pipe-2", "narrows": false}

test_pass_as_wide if {
	items := [good]
	never_narrower.proved == {"pipe-1 to pipe-2"} with input as {"joins": items}
}

test_fail_narrower if {
	items := [good, {"subject": "bad", "narrows": true}]
	never_narrower.proved == {"pipe-1 to pipe-2"} with input as {"joins": items}
}

test_not_shown_narrows if {
	items := [good, {"subject": "unknown"}]
	never_narrower.proved == {"pipe-1 to pipe-2"} with input as {"joins": items}
}
