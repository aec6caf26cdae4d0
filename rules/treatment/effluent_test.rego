package greysill.treatment.effluent_test

import rego.v2

import data.greysill.treatment.effluent

limits := {"effluent_bod_greatest": {"value": 0.03}}

good := {"subject": "good", "basis": "EC/EWPCA 1990", "greatest_effluent_in_cold": 0.01}

test_pass_clean if {
	items := [good, {"subject": "other", "basis": "EC/EWPCA 1990", "greatest_effluent_in_cold": 0.005}]
	effluent.proved == {"good", "other"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == set() with input as {"effluent": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "basis": "EC/EWPCA 1990", "greatest_effluent_in_cold": 0.03}]
	effluent.proved == {"good", "other"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == set() with input as {"effluent": items}
		with data.limits as limits
}

test_fail_just_too_foul if {
	items := [good, {"subject": "other", "basis": "EC/EWPCA 1990", "greatest_effluent_in_cold": 0.03001}]
	effluent.proved == {"good"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == set() with input as {"effluent": items}
		with data.limits as limits
}

test_excused_another_basis if {
	items := [good, {"subject": "other", "basis": "Kickuth", "greatest_effluent_in_cold": 0.2}]
	effluent.proved == {"good"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == {{"subject": "other", "reason": "the rule goes by the European guideline of 1990"}}
		with input as {"effluent": items}
		with data.limits as limits
}

test_excused_another_basis_whatever_it_says if {
	items := [good, {"subject": "other", "basis": "EPA 1993"}]
	effluent.proved == {"good"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == {{"subject": "other", "reason": "the rule goes by the European guideline of 1990"}}
		with input as {"effluent": items}
		with data.limits as limits
}

test_not_shown_basis if {
	items := [good, {"subject": "other", "greatest_effluent_in_cold": 0.01}]
	effluent.proved == {"good"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == set() with input as {"effluent": items}
		with data.limits as limits
}

test_not_shown_greatest_effluent_in_cold if {
	items := [good, {"subject": "other", "basis": "EC/EWPCA 1990"}]
	effluent.proved == {"good"} with input as {"effluent": items}
		with data.limits as limits
	effluent.excused == set() with input as {"effluent": items}
		with data.limits as limits
}
