package greysill.site.public_sewer_test

import rego.v2

import data.greysill.site.public_sewer

good := {"subject": "good", "sewage": "septic tank"}

test_pass_septic_tank if {
	public_sewer.proved == {"good"} with input as {"system": [good]}
}

test_fail_sewer if {
	public_sewer.proved == {"good"} with input as {"system": [good, {"subject": "bad", "sewage": "sewer"}]}
}

test_not_shown_sewage if {
	public_sewer.proved == {"good"} with input as {"system": [good, {"subject": "unknown"}]}
}
