# METADATA
# title: Greywater works keep their distance from streams, lakes, ponds and wetlands.
# description: >-
#   Greywater that reaches open water takes its germs, soap and nutrients along, to people who swim or draw water there
#   and to everything that lives in it. The soil in between is the treatment.
# custom:
#   subjects: clearances.surface_water
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: surface_water_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: surface_water_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
#     - title: Alaska Administrative Code 18 AAC 72.020
#       place: (b)
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1
#       standing: published
package greysill.clearances.surface_water

import rego.v2

proved contains c.subject if {
	some c in input.clearances.surface_water
	c.works == "field"
	c.distance >= data.limits.surface_water_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.surface_water
	c.works == "tank"
	c.distance >= data.limits.surface_water_from_tank.value
}

excused contains {"subject": c.subject, "reason": "a watertight pipe or fitting is not held to this distance"} if {
	some c in input.clearances.surface_water
	c.works in {"pipe", "fitting"}
}
