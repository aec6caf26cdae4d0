# METADATA
# title: Greywater works keep their distance from the property line.
# description: >-
#   The neighbour has not agreed to take this water, and no inspector can follow it there. The strip along the line is
#   what keeps it at home when the ground is wet.
# custom:
#   subjects: clearances.property_line
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: property_line_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: property_line_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther inside the property line.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1
#       standing: published
package greysill.clearances.property_line

import rego.v2

proved contains c.subject if {
	some c in input.clearances.property_line
	c.works == "field"
	c.distance >= data.limits.property_line_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.property_line
	c.works == "tank"
	c.distance >= data.limits.property_line_from_tank.value
}

excused contains {"subject": c.subject, "reason": "a watertight pipe or fitting is not held to this distance"} if {
	some c in input.clearances.property_line
	c.works in {"pipe", "fitting"}
}
