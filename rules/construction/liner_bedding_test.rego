package greysill.construction.liner_bedding_test

import rego.v2

import data.greysill.construction.liner_bedding

good := {"subject": "bed-1", "bedded": true}

test_pass_bedded if {
	items := [good]
	liner_bedding.proved == {"bed-1"} with input as {"quantities": {"liner": items}}
}

test_fail_on_bare_ground if {
	items := [good, {"subject": "bad", "bedded": false}]
	liner_bedding.proved == {"bed-1"} with input as {"quantities": {"liner": items}}
}

test_not_shown_bedded if {
	items := [good, {"subject": "unknown"}]
	liner_bedding.proved == {"bed-1"} with input as {"quantities": {"liner": items}}
}
