package greysill.exposure.discharge_cover_test

import rego.v2

import data.greysill.exposure.discharge_cover

limits := {"discharge_cover": {"value": 0.05}}

good := {"subject": "good", "cover": 0.1}

test_pass_well_covered if {
	discharge_cover.proved == {"good"} with input as {"discharges": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "cover": 0.05}]
	discharge_cover.proved == {"limit"} with input as {"discharges": items}
		with data.limits as limits
}

test_fail_just_too_thin if {
	items := [good, {"subject": "bad", "cover": 0.0499}]
	discharge_cover.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
}

test_fail_uncovered if {
	items := [good, {"subject": "bad", "cover": 0}]
	discharge_cover.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
}

test_not_shown_cover if {
	items := [good, {"subject": "unknown"}]
	discharge_cover.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
}
