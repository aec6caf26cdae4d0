package greysill.services.gas_cover_test

import rego.v2

import data.greysill.services.gas_cover

limits := {"gas_cover": {"value": 0.3}}

good := {"subject": "good", "kind": "gas", "cover": 0.5}

test_pass_deep if {
	items := [good]
	gas_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	gas_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "kind": "gas", "cover": 0.3}]
	gas_cover.proved == {"limit"} with input as {"services": items}
		with data.limits as limits
	gas_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_fail_just_too_shallow if {
	items := [good, {"subject": "bad", "kind": "gas", "cover": 0.2999}]
	gas_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	gas_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_not_shown_cover if {
	items := [good, {"subject": "unknown", "kind": "gas"}]
	gas_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	gas_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "unknown", "cover": 0.5}]
	gas_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	gas_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_excused_other_services if {
	items := [good, {"subject": "water-1", "kind": "water", "cover": 0.1}]
	gas_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	excused := gas_cover.excused with input as {"services": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"water-1"}
}
