package greysill.clearances.unprotected_well_test

import rego.v2

import data.greysill.clearances.unprotected_well

limits := {"unprotected_well_from_field": {"value": 60}}

pairs(items) := {"clearances": {"well": items}}

pair(subject, distance, serves, casing) := {
	"subject": subject,
	"works": "field",
	"distance": distance,
	"serves": serves,
	"casing": casing,
}

far := pair("far", 60, "the public", "not grouted")

test_pass_exactly_at_the_limit if {
	unprotected_well.proved == {"far"} with input as pairs([far])
		with data.limits as limits
}

test_pass_far_enough_whatever_the_well_is if {
	items := [far, {"subject": "unknown", "works": "field", "distance": 61}]
	unprotected_well.proved == {"far", "unknown"} with input as pairs(items)
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [far, pair("public", 59.999, "the public", "grouted"), pair("not grouted", 59.999, "a household", "not grouted")]
	unprotected_well.proved == {"far"} with input as pairs(items)
		with data.limits as limits
	unprotected_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_fail_touching if {
	unprotected_well.proved == {"far"} with input as pairs([far, pair("near", 0, "the public", "not grouted")])
		with data.limits as limits
}

test_not_shown_any_field if {
	near := pair("near", 40, "a household", "grouted")
	fields := ["works", "distance", "serves", "casing"]
	lacking := [object.union(object.remove(near, [f]), {"subject": f}) | some f in fields]
	items := array.concat([far], lacking)
	unprotected_well.proved == {"far"} with input as pairs(items)
		with data.limits as limits
	unprotected_well.excused == set() with input as pairs(items)
		with data.limits as limits
}

test_excused_private_and_grouted_and_what_lets_no_water_in if {
	items := [
		far,
		pair("private", 40, "a household", "grouted"),
		{"subject": "tank", "works": "tank", "distance": 0},
		{"subject": "pipe", "works": "pipe", "distance": 0},
		{"subject": "diverter", "works": "fitting", "distance": 0},
	]
	unprotected_well.proved == {"far"} with input as pairs(items)
		with data.limits as limits
	excused := unprotected_well.excused with input as pairs(items)
		with data.limits as limits
	{e.subject | some e in excused} == {"private", "tank", "pipe", "diverter"}
}
