package greysill.dispersal.treated_first_test

import rego.v2

import data.greysill.dispersal.treated_first

good := {"subject": "good", "treated_first": true}

test_pass_after_a_bed if {
	treated_first.proved == {"good"} with input as {"soakage": [good]}
}

test_fail_untreated if {
	treated_first.proved == {"good"} with input as {"soakage": [good, {"subject": "bad", "treated_first": false}]}
}

test_not_shown_treated_first if {
	treated_first.proved == {"good"} with input as {"soakage": [good, {"subject": "unknown"}]}
}
