package greysill.records.operator_test

import rego.v2

import data.greysill.records.operator

good := {"subject": "good", "operator": "owner"}

test_pass_named if {
	items := [good]
	operator.proved == {"good"} with input as {"plan": items}
}

test_fail_blank if {
	items := [good, {"subject": "bad", "operator": ""}]
	operator.proved == {"good"} with input as {"plan": items}
}

test_not_shown_operator if {
	items := [good, {"subject": "unknown"}]
	operator.proved == {"good"} with input as {"plan": items}
}
