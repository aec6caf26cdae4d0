# METADATA
# title: Greywater works keep their distance from every well and spring.
# description: >-
#   Germs and dissolved matter travel with the groundwater. The soil between the works and a well is what cleans the
#   water before somebody drinks it, and too little soil cannot.
# custom:
#   subjects: clearances.well
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: well_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: well_from_tank, where: {works: tank}}
#     - {field: distance, bound: at least, limit: well_from_pipe, where: {works: pipe}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or ask the health department what protection of the well it
#     would accept instead.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1
#       standing: published
#     - title: Washington Administrative Code 173-160-171
#       place: siting of a well, distance to a tight sewer line
#       standing: published
package greysill.clearances.well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.well_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "tank"
	c.distance >= data.limits.well_from_tank.value
}

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "pipe"
	c.distance >= data.limits.well_from_pipe.value
}

excused contains {"subject": c.subject, "reason": "a watertight fitting is not held to this distance"} if {
	some c in input.clearances.well
	c.works == "fitting"
}
