package greysill.bed.layers_fill_test

import rego.v2

import data.greysill.bed.layers_fill

good := {"subject": "good", "layers_fill": true}

test_pass_layers_that_fill if {
	layers_fill.proved == {"good"} with input as {"beds": [good]}
}

test_fail_layers_that_do_not if {
	layers_fill.proved == {"good"} with input as {"beds": [good, {"subject": "bad", "layers_fill": false}]}
}

test_not_shown_layers_fill if {
	layers_fill.proved == {"good"} with input as {"beds": [good, {"subject": "unknown"}]}
}
