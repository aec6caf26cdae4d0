package greysill.bed.layer_order_test

import rego.v2

import data.greysill.bed.layer_order

good := {"subject": "good", "no_finer_than_above": true}

test_pass_coarser_below if {
	items := [good, {"subject": "other", "no_finer_than_above": true}]
	layer_order.proved == {"good", "other"} with input as {"layers": items}
}

test_fail_finer_below if {
	items := [good, {"subject": "other", "no_finer_than_above": false}]
	layer_order.proved == {"good"} with input as {"layers": items}
}

test_not_shown_no_finer_than_above if {
	items := [good, {"subject": "other"}]
	layer_order.proved == {"good"} with input as {"layers": items}
}
