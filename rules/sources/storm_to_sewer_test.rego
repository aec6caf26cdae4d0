package greysill.sources.storm_to_sewer_test

import rego.v2

import data.greysill.sources.storm_to_sewer

roof(subject, sewer, joins) := {
	"subject": subject,
	"kind": "roof drain",
	"water": "clear water",
	"reaches_sewer": sewer,
	"joins_untreated": joins,
}

good := roof("good", false, false)

test_pass_roof_that_drains_elsewhere if {
	storm_to_sewer.proved == {"good"} with input as {"inflows": [good]}
}

test_pass_every_other_water if {
	waters := ["greywater", "toilet waste", "kitchen waste", "brine"]
	inflows := [{"subject": w, "kind": "fixture", "water": w, "reaches_sewer": true} | some w in waters]
	storm_to_sewer.proved == {"greywater", "toilet waste", "kitchen waste", "brine"} with input as {"inflows": inflows}
}

test_fail_roof_to_the_sewer if {
	inflows := [good, roof("bad", true, false)]
	storm_to_sewer.proved == {"good"} with input as {"inflows": inflows}
	storm_to_sewer.excused == set() with input as {"inflows": inflows}
}

test_not_shown_any_field if {
	lacking := [object.union(object.remove(roof("bad", true, true), [f]), {"subject": f}) |
		some f in ["water", "reaches_sewer", "joins_untreated"]
	]
	inflows := array.concat([good, object.remove(roof("kind", true, false), ["kind"])], lacking)
	storm_to_sewer.proved == {"good"} with input as {"inflows": inflows}
	storm_to_sewer.excused == set() with input as {"inflows": inflows}
}

test_excused_condensate_and_what_joins_greywater if {
	inflows := [good, roof("joined", true, true), object.union(roof("drip", true, false), {"kind": "condensate drain"})]
	storm_to_sewer.proved == {"good"} with input as {"inflows": inflows}
	excused := storm_to_sewer.excused with input as {"inflows": inflows}
	{e.subject | some e in excused} == {"joined", "drip"}
}
