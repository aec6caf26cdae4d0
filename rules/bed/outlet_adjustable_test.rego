package greysill.bed.outlet_adjustable_test

import rego.v2

import data.greysill.bed.outlet_adjustable

good := {"subject": "good", "outlet_adjustable": true}

test_pass_adjustable if {
	items := [good, {"subject": "other", "outlet_adjustable": true}]
	outlet_adjustable.proved == {"good", "other"} with input as {"beds": items}
}

test_fail_fixed if {
	items := [good, {"subject": "other", "outlet_adjustable": false}]
	outlet_adjustable.proved == {"good"} with input as {"beds": items}
}

test_not_shown_outlet_adjustable if {
	items := [good, {"subject": "other"}]
	outlet_adjustable.proved == {"good"} with input as {"beds": items}
}
