package greysill.records.prepared_test

import rego.v2

import data.greysill.records.prepared

good := {"subject": "good", "prepared_by": "owner", "prepared_on": "2025-05-01"}

test_pass_both if {
	items := [good]
	prepared.proved == {"good"} with input as {"plan": items}
}

test_fail_blank if {
	items := [good, {"subject": "bad", "prepared_by": "", "prepared_on": ""}]
	prepared.proved == {"good"} with input as {"plan": items}
}

test_not_shown_prepared_by if {
	items := [good, {"subject": "unknown", "prepared_on": "2025-05-01"}]
	prepared.proved == {"good"} with input as {"plan": items}
}

test_not_shown_prepared_on if {
	items := [good, {"subject": "unknown", "prepared_by": "owner"}]
	prepared.proved == {"good"} with input as {"plan": items}
}
