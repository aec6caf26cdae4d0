package greysill.exposure.mosquitoes_test

import rego.v2

import data.greysill.exposure.mosquitoes

good := {"subject": "good", "lies_open": false, "screened": true}

test_pass_screened if {
	items := [good, {"subject": "other", "lies_open": false, "screened": true}]
	mosquitoes.proved == {"good", "other"} with input as {"open_water": items}
	mosquitoes.excused == set() with input as {"open_water": items}
}

test_fail_not_screened if {
	items := [good, {"subject": "other", "lies_open": false, "screened": false}]
	mosquitoes.proved == {"good"} with input as {"open_water": items}
	mosquitoes.excused == set() with input as {"open_water": items}
}

test_excused_open if {
	items := [good, {"subject": "other", "lies_open": true, "screened": false}]
	mosquitoes.proved == {"good"} with input as {"open_water": items}
	excused := mosquitoes.excused with input as {"open_water": items}
	{e.subject | some e in excused} == {"other"}
}

test_excused_open_whatever_the_screen if {
	items := [good, {"subject": "other", "lies_open": true, "screened": true}]
	mosquitoes.proved == {"good"} with input as {"open_water": items}
	excused := mosquitoes.excused with input as {"open_water": items}
	{e.subject | some e in excused} == {"other"}
}

test_not_shown_lies_open if {
	items := [good, {"subject": "other", "screened": true}]
	mosquitoes.proved == {"good"} with input as {"open_water": items}
	mosquitoes.excused == set() with input as {"open_water": items}
}

test_not_shown_screened if {
	items := [good, {"subject": "other", "lies_open": false}]
	mosquitoes.proved == {"good"} with input as {"open_water": items}
	mosquitoes.excused == set() with input as {"open_water": items}
}
