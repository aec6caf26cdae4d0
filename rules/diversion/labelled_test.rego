package greysill.diversion.labelled_test

import rego.v2

import data.greysill.diversion.labelled

good := {"subject": "diverter-1", "labelled": true}

test_pass_labelled if {
	labelled.proved == {"diverter-1"} with input as {"diverters": [good]}
}

test_fail_not_labelled if {
	diverters := [good, {"subject": "diverter-2", "labelled": false}]
	labelled.proved == {"diverter-1"} with input as {"diverters": diverters}
}

test_not_shown_labelled if {
	diverters := [good, {"subject": "diverter-2"}]
	labelled.proved == {"diverter-1"} with input as {"diverters": diverters}
}
