package greysill.services.wiring_cover_test

import rego.v2

import data.greysill.services.wiring_cover

limits := {"wiring_cover_direct_burial": {"value": 0.1}, "wiring_cover_plastic_conduit": {"value": 0.2}, "wiring_cover_metal_conduit": {"value": 0.3}, "wiring_cover_fault_protected": {"value": 0.4}, "wiring_cover_low_voltage": {"value": 0.5}}

good := {"subject": "good", "wiring": "PVC conduit", "cover": 1}

test_pass_deep if {
	items := [good]
	wiring_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	wiring_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_pass_exactly_at_each_limit if {
	items := [{"subject": "direct burial cable", "wiring": "direct burial cable", "cover": 0.1}, {"subject": "PVC conduit", "wiring": "PVC conduit", "cover": 0.2}, {"subject": "metal conduit", "wiring": "metal conduit", "cover": 0.3}, {"subject": "GFCI-protected cable", "wiring": "GFCI-protected cable", "cover": 0.4}, {"subject": "low voltage", "wiring": "low voltage", "cover": 0.5}]
	wiring_cover.proved == {"direct burial cable", "PVC conduit", "metal conduit", "GFCI-protected cable", "low voltage"} with input as {"services": items}
		with data.limits as limits
	wiring_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_fail_just_too_shallow if {
	items := [good, {"subject": "direct burial cable", "wiring": "direct burial cable", "cover": 0.0999}, {"subject": "PVC conduit", "wiring": "PVC conduit", "cover": 0.19990000000000002}, {"subject": "metal conduit", "wiring": "metal conduit", "cover": 0.2999}, {"subject": "GFCI-protected cable", "wiring": "GFCI-protected cable", "cover": 0.39990000000000003}, {"subject": "low voltage", "wiring": "low voltage", "cover": 0.4999}]
	wiring_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	wiring_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_not_shown_cover if {
	items := [good, {"subject": "direct burial cable", "wiring": "direct burial cable"}, {"subject": "PVC conduit", "wiring": "PVC conduit"}, {"subject": "metal conduit", "wiring": "metal conduit"}, {"subject": "GFCI-protected cable", "wiring": "GFCI-protected cable"}, {"subject": "low voltage", "wiring": "low voltage"}]
	wiring_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	wiring_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_not_shown_wiring if {
	items := [good, {"subject": "unknown", "cover": 5}]
	wiring_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	wiring_cover.excused == set() with input as {"services": items}
		with data.limits as limits
}

test_excused_what_is_no_wire if {
	items := [good, {"subject": "gas-1", "wiring": "none", "cover": 0}]
	wiring_cover.proved == {"good"} with input as {"services": items}
		with data.limits as limits
	excused := wiring_cover.excused with input as {"services": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"gas-1"}
}
