package greysill.pond.dam_law_test

import rego.v2

import data.greysill.pond.dam_law

limits := {
	"dam_height": {"value": 2},
	"dam_storage": {"value": 9000},
}

good := {"subject": "good", "embankment_height": 1, "volume": 50}

test_pass_good if {
	items := [good]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
}

test_pass_exactly_at_both_limits if {
	items := [{"subject": "other", "embankment_height": 2, "volume": 9000}]
	dam_law.proved == {"other"} with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_high if {
	items := [good, {"subject": "other", "embankment_height": 2.0001, "volume": 50}]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	dam_law.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_just_too_much_water if {
	items := [good, {"subject": "other", "embankment_height": 1, "volume": 9000.1}]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	dam_law.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_fail_high_and_large if {
	items := [good, {"subject": "other", "embankment_height": 8, "volume": 90000}]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	dam_law.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_embankment_height if {
	items := [good, {"subject": "other", "volume": 50}]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	dam_law.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_not_shown_volume if {
	items := [good, {"subject": "other", "embankment_height": 1}]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	dam_law.excused == set() with input as {"ponds": items}
		with data.limits as limits
}

test_excused_no_embankment if {
	items := [good, {"subject": "other", "embankment_height": 0, "volume": 50}]
	dam_law.proved == {"good"} with input as {"ponds": items}
		with data.limits as limits
	dam_law.excused == {{"subject": "other", "reason": "it is dug in, with no embankment round it"}} with input as {"ponds": items}
		with data.limits as limits
}
