package greysill.services.under_digs_test

import rego.v2

import data.greysill.services.under_digs

limits := {"tolerance_zone": {"value": 0.6}}

good := {"subject": "bed-1 and gas-1", "undug": 0.8}

test_pass_well_below if {
	items := [good]
	under_digs.proved == {"bed-1 and gas-1"} with input as {"dug_services": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "undug": 0.6}]
	under_digs.proved == {"limit"} with input as {"dug_services": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, {"subject": "bad", "undug": 0.5999}]
	under_digs.proved == {"bed-1 and gas-1"} with input as {"dug_services": items}
		with data.limits as limits
}

test_fail_dug_down_to_it if {
	items := [good, {"subject": "bad", "undug": -0.2}]
	under_digs.proved == {"bed-1 and gas-1"} with input as {"dug_services": items}
		with data.limits as limits
}

test_not_shown_undug if {
	items := [good, {"subject": "unknown"}]
	under_digs.proved == {"bed-1 and gas-1"} with input as {"dug_services": items}
		with data.limits as limits
}
