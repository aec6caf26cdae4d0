package greysill.exposure.open_water_permit_test

import rego.v2

import data.greysill.exposure.open_water_permit

permitted := {"subject": "permitted", "kind": "pond", "lies_open": true, "receives_wastewater": true, "has_permit": true}

without(subject, kind, lies_open, receives) := {
	"subject": subject,
	"kind": kind,
	"lies_open": lies_open,
	"receives_wastewater": receives,
	"has_permit": false,
}

test_pass_permit_named if {
	open_water_permit.proved == {"permitted"} with input as {"open_water": [permitted]}
}

test_pass_spillway_with_a_permit if {
	waters := [object.union(permitted, {"kind": "spillway"})]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	open_water_permit.excused == set() with input as {"open_water": waters}
}

test_pass_rain_alone if {
	waters := [without("pond-1", "pond", true, false), without("tank-1", "surge tank", false, false)]
	open_water_permit.proved == {"pond-1", "tank-1"} with input as {"open_water": waters}
	open_water_permit.excused == set() with input as {"open_water": waters}
}

test_fail_without_permit if {
	waters := [permitted, without("pond-1", "pond", true, true)]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	open_water_permit.excused == set() with input as {"open_water": waters}
}

test_not_shown_receives_wastewater if {
	waters := [permitted, object.remove(without("pond-1", "pond", true, true), ["receives_wastewater"])]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	open_water_permit.excused == set() with input as {"open_water": waters}
}

test_not_shown_lies_open if {
	waters := [permitted, object.remove(without("tank-1", "surge tank", true, true), ["lies_open"])]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	open_water_permit.excused == set() with input as {"open_water": waters}
}

test_not_shown_has_permit if {
	waters := [permitted, object.remove(without("pond-1", "pond", true, true), ["has_permit"])]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	open_water_permit.excused == set() with input as {"open_water": waters}
}

test_excused_covered if {
	waters := [permitted, without("tank-1", "surge tank", false, true)]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	excused := open_water_permit.excused with input as {"open_water": waters}
	excused == {{"subject": "tank-1", "reason": "its water lies covered"}}
}

test_excused_spillway if {
	waters := [permitted, without("spill-1", "spillway", true, true)]
	open_water_permit.proved == {"permitted"} with input as {"open_water": waters}
	excused := open_water_permit.excused with input as {"open_water": waters}
	excused == {{"subject": "spill-1", "reason": "a spillway holds no water"}}
}
