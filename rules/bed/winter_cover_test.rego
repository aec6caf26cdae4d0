package greysill.bed.winter_cover_test

import rego.v2

import data.greysill.bed.winter_cover

limits := {"winter_mulch": {"value": 0.15}}

good := {"subject": "good", "runs_in_frost": true, "mulch": 0.2}

test_pass_thick_mulch if {
	items := [good, {"subject": "other", "runs_in_frost": true, "mulch": 0.3}]
	winter_cover.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "runs_in_frost": true, "mulch": 0.15}]
	winter_cover.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_thin if {
	items := [good, {"subject": "other", "runs_in_frost": true, "mulch": 0.1499}]
	winter_cover.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_fail_no_mulch if {
	items := [good, {"subject": "other", "runs_in_frost": true, "mulch": 0}]
	winter_cover.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_excused_no_frost if {
	items := [good, {"subject": "other", "runs_in_frost": false, "mulch": 0}]
	winter_cover.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == {{"subject": "other", "reason": "it does not run in a month that freezes"}}
		with input as {"beds": items}
		with data.limits as limits
}

test_excused_no_frost_whatever_the_mulch if {
	items := [good, {"subject": "other", "runs_in_frost": false, "mulch": 0.2}]
	winter_cover.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == {{"subject": "other", "reason": "it does not run in a month that freezes"}}
		with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_runs_in_frost if {
	items := [good, {"subject": "other", "mulch": 0.2}]
	winter_cover.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == set() with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_mulch if {
	items := [good, {"subject": "other", "runs_in_frost": true}]
	winter_cover.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
	winter_cover.excused == set() with input as {"beds": items}
		with data.limits as limits
}
