# METADATA
# title: A greywater pipe keeps its distance from a water line that runs beside it.
# description: >-
#   In a shared trench a leak of the one fills the other's bed. When the pressure drops, the water line draws it in.
#   Codes let the two share a trench only where the drain is of a listed pipe or the water line lies well above.
# custom:
#   subjects: digs
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: beside_drinking_water, where: {service_kind: water}}
#   remedy: >-
#     Move {part} at least {short} farther from {service}; or have a licensed plumber show how the plumbing code in force
#     lets the two lie so near, and name that as a variance.
#   caution: drinking_water
#   sources:
#     - title: International Plumbing Code 603.2 (2012), as a code forum quotes it
#       standing: published
package greysill.services.beside_drinking_water

import rego.v2

proved contains d.subject if {
	some d in input.digs
	d.service_kind == "water"
	d.part_kind in {"drain pipe", "overflow pipe"}
	d.meets == false
	d.distance >= data.limits.beside_drinking_water.value
}

excused contains {"subject": d.subject, "reason": "the service is no water line"} if {
	some d in input.digs
	d.service_kind in {"line voltage", "low voltage", "gas", "telecom", "sewer", "irrigation"}
}

excused contains {"subject": d.subject, "reason": "it is no pipe; clearances/water_service judges it"} if {
	some d in input.digs
	d.service_kind == "water"
	d.part_kind in {
		"surge tank", "planted gravel bed", "mulch basin", "infiltration trench", "settling basin",
		"pond",
	}
}

excused contains {"subject": d.subject, "reason": "the two meet, which services/crossing_drinking_water judges"} if {
	some d in input.digs
	d.service_kind == "water"
	d.part_kind in {"drain pipe", "overflow pipe"}
	d.meets == true
}
