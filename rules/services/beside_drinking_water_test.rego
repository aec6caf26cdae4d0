package greysill.services.beside_drinking_water_test

import rego.v2

import data.greysill.services.beside_drinking_water

limits := {"beside_drinking_water": {"value": 2}}

beside(distance) := {
	"subject": $"at {distance}",
	"service_kind": "water",
	"part_kind": "drain pipe",
	"meets": false,
	"distance": distance,
}

good := beside(2)

test_pass_exactly_at_the_limit if {
	items := [good, object.union(beside(3), {"part_kind": "overflow pipe"})]
	beside_drinking_water.proved == {"at 2", "at 3"} with input as {"digs": items}
		with data.limits as limits
}

test_fail_just_too_near if {
	items := [good, beside(1.999)]
	beside_drinking_water.proved == {"at 2"} with input as {"digs": items}
		with data.limits as limits
	beside_drinking_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_not_shown_any_field if {
	fields := ["service_kind", "part_kind", "meets", "distance"]
	items := array.concat([good], [object.union(object.remove(beside(1), [f]), {"subject": f}) | some f in fields])
	beside_drinking_water.proved == {"at 2"} with input as {"digs": items}
		with data.limits as limits
	beside_drinking_water.excused == set() with input as {"digs": items}
		with data.limits as limits
}

test_excused_other_lines_other_digs_and_crossings if {
	items := [
		good,
		object.union(beside(0.1), {"subject": "gas", "service_kind": "gas"}),
		object.union(beside(0.1), {"subject": "bed", "part_kind": "planted gravel bed"}),
		object.union(beside(0), {"subject": "crosses", "meets": true}),
	]
	beside_drinking_water.proved == {"at 2"} with input as {"digs": items}
		with data.limits as limits
	excused := beside_drinking_water.excused with input as {"digs": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"gas", "bed", "crosses"}
}
