# METADATA
# title: Greywater works keep their distance from the house's water service.
# description: >-
#   When the pressure drops, a water pipe with the smallest leak draws in what stands in the soil round it, and the
#   household drinks it.
# custom:
#   subjects: clearances.water_service
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: water_service_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: water_service_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or have the water service laid elsewhere by a licensed
#     plumber.
#   caution: drinking_water
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
#     - title: Massachusetts regulations 310 CMR 15.211
#       place: pressure water line to a soil absorption system
#       standing: published
package greysill.clearances.water_service

import rego.v2

proved contains c.subject if {
	some c in input.clearances.water_service
	c.works == "field"
	c.distance >= data.limits.water_service_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.water_service
	c.works == "tank"
	c.distance >= data.limits.water_service_from_tank.value
}

excused contains {
	"subject": c.subject,
	"reason": "pipes and fittings are held to the plumbing code's separation in depth; this distance is in plan",
} if {
	some c in input.clearances.water_service
	c.works in {"pipe", "fitting"}
}
