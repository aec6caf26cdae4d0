package greysill.bed.odd_test

import rego.v2

import data.greysill.bed.odd

test_pass_odd if {
	print("\u001b[2J\u001b]0;owned\u0007\u202e<script>alert(1)</script> | **bold** [link](http://example.invalid) `code` &amp; \r::error::")
	odd.proved == {"no"} with input as {"beds": []}
}
