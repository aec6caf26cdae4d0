package greysill.bed.roots_test

import rego.v2

import data.greysill.bed.roots

limits := {"root_reach": {"value": 1}}

good := {"subject": "good", "root_reach": 1.2}

test_pass_deep_roots if {
	items := [good, {"subject": "other", "root_reach": 1.5}]
	roots.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "root_reach": 1}]
	roots.proved == {"good", "other"} with input as {"beds": items}
		with data.limits as limits
}

test_fail_just_too_short if {
	items := [good, {"subject": "other", "root_reach": 0.999}]
	roots.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}

test_not_shown_root_reach if {
	items := [good, {"subject": "other"}]
	roots.proved == {"good"} with input as {"beds": items}
		with data.limits as limits
}
