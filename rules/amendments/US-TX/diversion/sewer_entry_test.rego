package greysill.diversion.sewer_entry_test

import rego.v2

import data.greysill.diversion.sewer_entry

good := {"subject": "good", "backwater": "valve or air gap"}

test_pass_guarded if {
	sewer_entry.proved == {"good"} with input as {"sewer_ways": [good]}
}

test_fail_open_whatever_its_level if {
	items := [good, {"subject": "bad", "backwater": "none", "above_surcharge": 100}]
	sewer_entry.proved == {"good"} with input as {"sewer_ways": items}
}

test_not_shown_backwater if {
	items := [good, {"subject": "other", "above_surcharge": 100}]
	sewer_entry.proved == {"good"} with input as {"sewer_ways": items}
}
