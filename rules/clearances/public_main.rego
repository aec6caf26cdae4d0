# METADATA
# title: Greywater works keep their distance from every public water main.
# description: >-
#   When the pressure drops, a main with the smallest leak draws in what stands in the soil round it, and the whole
#   street drinks it.
# custom:
#   subjects: clearances.public_main
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: public_main_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: public_main_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}. Ask the water supplier before anything is laid beside or
#     across a main.
#   caution: drinking_water
#   sources:
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1
#       standing: published
package greysill.clearances.public_main

import rego.v2

proved contains c.subject if {
	some c in input.clearances.public_main
	c.works == "field"
	c.distance >= data.limits.public_main_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.public_main
	c.works == "tank"
	c.distance >= data.limits.public_main_from_tank.value
}

excused contains {
	"subject": c.subject,
	"reason": "pipes and fittings are held to the plumbing code's separation in depth; this distance is in plan",
} if {
	some c in input.clearances.public_main
	c.works in {"pipe", "fitting"}
}
