package greysill.pond.winter_depth_test

import rego.v2

import data.greysill.pond.winter_depth

good := {"subject": "good", "stocked": true, "water_under_ice": true}

test_pass_good if {
	items := [good]
	winter_depth.proved == {"good"} with input as {"ponds": items}
}

test_fail_freezes_to_the_floor if {
	items := [good, {"subject": "other", "stocked": true, "water_under_ice": false}]
	winter_depth.proved == {"good"} with input as {"ponds": items}
	winter_depth.excused == set() with input as {"ponds": items}
}

test_not_shown_stocked if {
	items := [good, {"subject": "other", "water_under_ice": true}]
	winter_depth.proved == {"good"} with input as {"ponds": items}
	winter_depth.excused == set() with input as {"ponds": items}
}

test_not_shown_water_under_ice if {
	items := [good, {"subject": "other", "stocked": true}]
	winter_depth.proved == {"good"} with input as {"ponds": items}
	winter_depth.excused == set() with input as {"ponds": items}
}

test_excused_no_fish if {
	items := [good, {"subject": "other", "stocked": false, "water_under_ice": true}]
	winter_depth.proved == {"good"} with input as {"ponds": items}
	wanted := {{"subject": "other", "reason": "no fish are drawn in it"}}
	winter_depth.excused == wanted with input as {"ponds": items}
}
