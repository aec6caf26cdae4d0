package greysill.settling.ahead_of_pond_test

import rego.v2

import data.greysill.settling.ahead_of_pond

good := {"subject": "good", "settled_first": true}

test_pass_good if {
	items := [good]
	ahead_of_pond.proved == {"good"} with input as {"ponds": items}
}

test_fail_unsettled if {
	items := [good, {"subject": "other", "settled_first": false}]
	ahead_of_pond.proved == {"good"} with input as {"ponds": items}
}

test_not_shown_settled_first if {
	items := [good, {"subject": "other"}]
	ahead_of_pond.proved == {"good"} with input as {"ponds": items}
}
