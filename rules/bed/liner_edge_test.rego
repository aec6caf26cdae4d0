package greysill.bed.liner_edge_test

import rego.v2

import data.greysill.bed.liner_edge

good := {"subject": "good", "liner_reaches_over_edge": true}

test_pass_over_the_edge if {
	items := [good, {"subject": "other", "liner_reaches_over_edge": true}]
	liner_edge.proved == {"good", "other"} with input as {"beds": items}
}

test_fail_ends_at_the_edge if {
	items := [good, {"subject": "other", "liner_reaches_over_edge": false}]
	liner_edge.proved == {"good"} with input as {"beds": items}
}

test_not_shown_liner_reaches_over_edge if {
	items := [good, {"subject": "other"}]
	liner_edge.proved == {"good"} with input as {"beds": items}
}
