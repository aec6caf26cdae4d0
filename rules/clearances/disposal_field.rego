# METADATA
# title: Greywater works keep their distance from sewage disposal fields and seepage pits.
# description: >-
#   A disposal field has as much water as its soil can take. Greywater that seeps into it drowns it, and sewage then
#   comes to the surface.
# custom:
#   subjects: clearances.disposal_field
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: disposal_field_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: disposal_field_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, and keep it off the ground set aside for its
#     replacement.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1
#       standing: published
package greysill.clearances.disposal_field

import rego.v2

proved contains c.subject if {
	some c in input.clearances.disposal_field
	c.works == "field"
	c.distance >= data.limits.disposal_field_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.disposal_field
	c.works == "tank"
	c.distance >= data.limits.disposal_field_from_tank.value
}

excused contains {"subject": c.subject, "reason": "a watertight pipe or fitting is not held to this distance"} if {
	some c in input.clearances.disposal_field
	c.works in {"pipe", "fitting"}
}
