package greysill.records.soil_tested_test

import rego.v2

import data.greysill.records.soil_tested

limits := {"soil_tests": {"value": 2}}

good := {"subject": "good", "soaks_away": true, "soil_tests": 3}

test_pass_tested if {
	items := [good]
	soil_tested.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
	soil_tested.excused == set() with input as {"plan": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "soaks_away": true, "soil_tests": 2}]
	soil_tested.proved == {"limit"} with input as {"plan": items}
		with data.limits as limits
	soil_tested.excused == set() with input as {"plan": items}
		with data.limits as limits
}

test_fail_one_too_few if {
	items := [good, {"subject": "bad", "soaks_away": true, "soil_tests": 1}]
	soil_tested.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
	soil_tested.excused == set() with input as {"plan": items}
		with data.limits as limits
}

test_not_shown_soil_tests if {
	items := [good, {"subject": "unknown", "soaks_away": true}]
	soil_tested.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
	soil_tested.excused == set() with input as {"plan": items}
		with data.limits as limits
}

test_not_shown_soaks_away if {
	items := [good, {"subject": "unknown", "soil_tests": 3}]
	soil_tested.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
	soil_tested.excused == set() with input as {"plan": items}
		with data.limits as limits
}

test_excused_nothing_soaks if {
	items := [good, {"subject": "tight", "soaks_away": false, "soil_tests": 0}]
	soil_tested.proved == {"good"} with input as {"plan": items}
		with data.limits as limits
	excused := soil_tested.excused with input as {"plan": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"tight"}
}
