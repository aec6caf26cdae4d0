package greysill.drains.frost_test

import rego.v2

import data.greysill.drains.frost

limits := {"cover_below_frost": {"value": 0}}

good := {"subject": "good", "indoors": false, "runs_in_winter": true, "cover_below_frost": 0.2}

test_pass_below_the_frost if {
	items := [good]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	frost.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "indoors": false, "runs_in_winter": true, "cover_below_frost": 0}]
	frost.proved == {"limit"} with input as {"pipes": items}
		with data.limits as limits
	frost.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_fail_just_too_shallow if {
	items := [good, {"subject": "bad", "indoors": false, "runs_in_winter": true, "cover_below_frost": -0.0001}]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	frost.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_cover_below_frost if {
	items := [good, {"subject": "unknown", "indoors": false, "runs_in_winter": true}]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	frost.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_runs_in_winter if {
	items := [good, {"subject": "unknown", "indoors": false, "cover_below_frost": 0.2}]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	frost.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_not_shown_indoors if {
	items := [good, {"subject": "unknown", "runs_in_winter": true, "cover_below_frost": 0.2}]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	frost.excused == set() with input as {"pipes": items}
		with data.limits as limits
}

test_excused_dry_in_winter if {
	items := [good, {"subject": "dry", "indoors": false, "runs_in_winter": false, "cover_below_frost": -1}]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	excused := frost.excused with input as {"pipes": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"dry"}
}

test_excused_indoors if {
	items := [good, {"subject": "indoors", "indoors": true, "runs_in_winter": true, "cover_below_frost": -1}]
	frost.proved == {"good"} with input as {"pipes": items}
		with data.limits as limits
	excused := frost.excused with input as {"pipes": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"indoors"}
}
