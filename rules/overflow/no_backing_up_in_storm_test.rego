package greysill.overflow.no_backing_up_in_storm_test

import rego.v2

import data.greysill.overflow.no_backing_up_in_storm

good := {"subject": "good", "into_soil": false, "drowned_dry": false, "drowned_in_storm": false}

test_pass_good if {
	items := [good]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
}

test_fail_drowned_in_the_storm if {
	items := [good, {"subject": "other", "into_soil": false, "drowned_dry": false, "drowned_in_storm": true}]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
	no_backing_up_in_storm.excused == set() with input as {"drops": items}
}

test_not_shown_into_soil if {
	items := [good, {"subject": "other", "drowned_dry": false, "drowned_in_storm": false}]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
	no_backing_up_in_storm.excused == set() with input as {"drops": items}
}

test_not_shown_drowned_dry if {
	items := [good, {"subject": "other", "into_soil": false, "drowned_in_storm": false}]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
	no_backing_up_in_storm.excused == set() with input as {"drops": items}
}

test_not_shown_drowned_in_storm if {
	items := [good, {"subject": "other", "into_soil": false, "drowned_dry": false}]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
	no_backing_up_in_storm.excused == set() with input as {"drops": items}
}

test_excused_soaks_away if {
	items := [good, {"subject": "other", "into_soil": true, "drowned_dry": false, "drowned_in_storm": false}]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
	wanted := {{"subject": "other", "reason": "how high a storm stands in soil or gravel is not worked out"}}
	no_backing_up_in_storm.excused == wanted with input as {"drops": items}
}

test_excused_drowned_already if {
	items := [good, {"subject": "other", "into_soil": false, "drowned_dry": true, "drowned_in_storm": false}]
	no_backing_up_in_storm.proved == {"good"} with input as {"drops": items}
	wanted := {{"subject": "other", "reason": "it backs up in ordinary flow, which overflow/no_backing_up judges"}}
	no_backing_up_in_storm.excused == wanted with input as {"drops": items}
}
