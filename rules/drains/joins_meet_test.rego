package greysill.drains.joins_meet_test

import rego.v2

import data.greysill.drains.joins_meet

good := {"subject": "pipe-1 to tank-1", "meets": true}

test_pass_meeting if {
	items := [good]
	joins_meet.proved == {"pipe-1 to tank-1"} with input as {"joins": items}
}

test_fail_apart if {
	items := [good, {"subject": "bad", "meets": false}]
	joins_meet.proved == {"pipe-1 to tank-1"} with input as {"joins": items}
}

test_not_shown_meets if {
	items := [good, {"subject": "unknown"}]
	joins_meet.proved == {"pipe-1 to tank-1"} with input as {"joins": items}
}
