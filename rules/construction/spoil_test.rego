package greysill.construction.spoil_test

import rego.v2

import data.greysill.construction.spoil

limits := {"spoil_distance": {"value": 0.6}}

good := {"subject": "good", "spoil_distance": 1}

test_pass_kept_back if {
	items := [good]
	spoil.proved == {"good"} with input as {"construction": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "spoil_distance": 0.6}]
	spoil.proved == {"limit"} with input as {"construction": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "spoil_distance": 0.5999}]
	spoil.proved == {"good"} with input as {"construction": items}
		with data.limits as limits
}

test_not_shown_spoil_distance if {
	items := [good, {"subject": "unknown"}]
	spoil.proved == {"good"} with input as {"construction": items}
		with data.limits as limits
}
