package greysill.settling.reachable_test

import rego.v2

import data.greysill.settling.reachable

good := {"subject": "good", "accessible": true}

test_pass_good if {
	items := [good]
	reachable.proved == {"good"} with input as {"settling": items}
}

test_fail_buried if {
	items := [good, {"subject": "other", "accessible": false}]
	reachable.proved == {"good"} with input as {"settling": items}
}

test_not_shown_accessible if {
	items := [good, {"subject": "other"}]
	reachable.proved == {"good"} with input as {"settling": items}
}
