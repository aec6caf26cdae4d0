package greysill.exposure.inlet_surfacing_test

import rego.v2

import data.greysill.exposure.inlet_surfacing

limits := {"water_rise_share": {"value": 1}}

good := {"subject": "good", "clogging": "developed bed", "rise_share": 0.3}

test_pass_little_rise if {
	items := [good, {"subject": "other", "clogging": "developed bed", "rise_share": 0.1}]
	inlet_surfacing.proved == {"good", "other"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == set() with input as {"head_loss": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {"subject": "other", "clogging": "developed bed", "rise_share": 1}]
	inlet_surfacing.proved == {"good", "other"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == set() with input as {"head_loss": items}
		with data.limits as limits
}

test_fail_just_above_the_gravel if {
	items := [good, {"subject": "other", "clogging": "developed bed", "rise_share": 1.001}]
	inlet_surfacing.proved == {"good"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == set() with input as {"head_loss": items}
		with data.limits as limits
}

test_excused_clean_media if {
	items := [good, {"subject": "other", "clogging": "clean media", "rise_share": 0.01}]
	inlet_surfacing.proved == {"good"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == {{"subject": "other", "reason": "the rule goes by a developed bed"}}
		with input as {"head_loss": items}
		with data.limits as limits
}

test_excused_a_third if {
	items := [good, {"subject": "other", "clogging": "a third", "rise_share": 0.3}]
	inlet_surfacing.proved == {"good"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == {{"subject": "other", "reason": "the rule goes by a developed bed"}}
		with input as {"head_loss": items}
		with data.limits as limits
}

test_excused_two_zones_whatever_the_rise if {
	items := [good, {"subject": "other", "clogging": "two zones", "rise_share": 5}]
	inlet_surfacing.proved == {"good"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == {{"subject": "other", "reason": "the rule goes by a developed bed"}}
		with input as {"head_loss": items}
		with data.limits as limits
}

test_not_shown_clogging if {
	items := [good, {"subject": "other", "rise_share": 0.3}]
	inlet_surfacing.proved == {"good"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == set() with input as {"head_loss": items}
		with data.limits as limits
}

test_not_shown_rise_share if {
	items := [good, {"subject": "other", "clogging": "developed bed"}]
	inlet_surfacing.proved == {"good"} with input as {"head_loss": items}
		with data.limits as limits
	inlet_surfacing.excused == set() with input as {"head_loss": items}
		with data.limits as limits
}
