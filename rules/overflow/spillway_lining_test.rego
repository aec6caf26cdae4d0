package greysill.overflow.spillway_lining_test

import rego.v2

import data.greysill.overflow.spillway_lining

good := {"subject": "good", "lining_stated": true}

test_pass_good if {
	items := [good]
	spillway_lining.proved == {"good"} with input as {"spillway_channels": items}
}

test_fail_bare if {
	items := [good, {"subject": "other", "lining_stated": false}]
	spillway_lining.proved == {"good"} with input as {"spillway_channels": items}
}

test_not_shown_lining_stated if {
	items := [good, {"subject": "other"}]
	spillway_lining.proved == {"good"} with input as {"spillway_channels": items}
}
