package greysill.sources.clear_water_in_soil_test

import rego.v2

import data.greysill.sources.clear_water_in_soil

roof(subject, soil, untreated) := {
	"subject": subject,
	"water": "clear water",
	"joins_in_soil": soil,
	"joins_untreated": untreated,
}

good := roof("good", false, false)

test_pass_elsewhere_and_every_other_water if {
	waters := ["greywater", "toilet waste", "kitchen waste", "brine"]
	inflows := array.concat([good], [{"subject": w, "water": w, "joins_in_soil": true} | some w in waters])
	clear_water_in_soil.proved == {"good", "greywater", "toilet waste", "kitchen waste", "brine"}
		with input as {"inflows": inflows}
}

test_fail_into_the_trench if {
	inflows := [good, roof("bad", true, false)]
	clear_water_in_soil.proved == {"good"} with input as {"inflows": inflows}
	clear_water_in_soil.excused == set() with input as {"inflows": inflows}
}

test_not_shown_any_field if {
	fields := ["water", "joins_in_soil", "joins_untreated"]
	inflows := array.concat([good], [object.union(object.remove(roof("bad", true, true), [f]), {"subject": f}) | some f in fields])
	clear_water_in_soil.proved == {"good"} with input as {"inflows": inflows}
	clear_water_in_soil.excused == set() with input as {"inflows": inflows}
}

test_excused_what_joins_untreated if {
	inflows := [good, roof("joined", true, true)]
	clear_water_in_soil.proved == {"good"} with input as {"inflows": inflows}
	excused := clear_water_in_soil.excused with input as {"inflows": inflows}
	{e.subject | some e in excused} == {"joined"}
}
