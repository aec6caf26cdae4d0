package greysill.site.sewered_test

import rego.v2

import data.greysill.site.sewered

good := {"subject": "good", "sewage": "sewer"}

test_pass_sewer if {
	sewered.proved == {"good"} with input as {"system": [good]}
}

test_fail_septic_tank if {
	sewered.proved == {"good"} with input as {"system": [good, {"subject": "bad", "sewage": "septic tank"}]}
}

test_not_shown_sewage if {
	sewered.proved == {"good"} with input as {"system": [good, {"subject": "unknown"}]}
}
