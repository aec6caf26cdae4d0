package greysill.records.upkeep_test

import rego.v2

import data.greysill.records.upkeep

good := {"subject": "filter-1", "timed": true}

test_pass_timed if {
	items := [good]
	upkeep.proved == {"filter-1"} with input as {"upkeep": items}
}

test_fail_without_a_task if {
	items := [good, {"subject": "bad", "timed": false}]
	upkeep.proved == {"filter-1"} with input as {"upkeep": items}
}

test_not_shown_timed if {
	items := [good, {"subject": "unknown"}]
	upkeep.proved == {"filter-1"} with input as {"upkeep": items}
}
