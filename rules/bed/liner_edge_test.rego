package greysill.bed.liner_edge_test

import rego.v2

import data.greysill.bed.liner_edge

limits := {"liner_overlap": {"value": 0.3}}

good := {"subject": "good", "liner_overlap": 0.5}

test_pass_over_the_edge if {
	liner_edge.proved == {"good"} with input as {"beds": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	liner_edge.proved == {"limit"} with input as {"beds": [{"subject": "limit", "liner_overlap": 0.3}]}
		with data.limits as limits
}

test_fail_just_too_short if {
	liner_edge.proved == {"good"} with input as {"beds": [good, {"subject": "bad", "liner_overlap": 0.2999}]}
		with data.limits as limits
}

test_not_shown_liner_overlap if {
	liner_edge.proved == {"good"} with input as {"beds": [good, {"subject": "unknown"}]}
		with data.limits as limits
}
