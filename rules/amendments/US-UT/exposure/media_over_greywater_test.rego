package greysill.exposure.media_over_greywater_test

import rego.v2

import data.greysill.exposure.media_over_greywater

limits := {"utah_media_over_greywater": {"value": 0.15}}

good := {"subject": "good", "kind": "mulch basin", "cover": 0.2}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "kind": "mulch basin", "cover": 0.15}]
	media_over_greywater.proved == {"limit"} with input as {"discharges": items}
		with data.limits as limits
	media_over_greywater.excused == set() with input as {"discharges": items}
		with data.limits as limits
}

test_fail_just_too_thin if {
	items := [good, {"subject": "bad", "kind": "mulch basin", "cover": 0.1499}]
	media_over_greywater.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
	media_over_greywater.excused == set() with input as {"discharges": items}
		with data.limits as limits
}

test_not_shown_cover if {
	items := [good, {"subject": "other", "kind": "mulch basin"}]
	media_over_greywater.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
	media_over_greywater.excused == set() with input as {"discharges": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "cover": 1}]
	media_over_greywater.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
	media_over_greywater.excused == set() with input as {"discharges": items}
		with data.limits as limits
}

test_excused_beds_and_trenches if {
	items := [good, {"subject": "bed", "kind": "planted gravel bed", "cover": 1}, {"subject": "trench", "kind": "infiltration trench"}]
	excused := media_over_greywater.excused with input as {"discharges": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"bed", "trench"}
	media_over_greywater.proved == {"good"} with input as {"discharges": items}
		with data.limits as limits
}
