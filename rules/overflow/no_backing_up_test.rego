package greysill.overflow.no_backing_up_test

import rego.v2

import data.greysill.overflow.no_backing_up

good := {"subject": "good", "drowned_dry": false}

test_pass_good if {
	items := [good]
	no_backing_up.proved == {"good"} with input as {"drops": items}
}

test_fail_drowned if {
	items := [good, {"subject": "other", "drowned_dry": true}]
	no_backing_up.proved == {"good"} with input as {"drops": items}
}

test_not_shown_drowned_dry if {
	items := [good, {"subject": "other"}]
	no_backing_up.proved == {"good"} with input as {"drops": items}
}
