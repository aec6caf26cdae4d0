# METADATA
# title: Greywater works keep their distance from every well and spring.
# description: >-
#   Germs and dissolved matter travel with the groundwater. Soil between the works and a well is what cleans the
#   water before somebody drinks it, and too little soil cannot.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: well_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: well_from_tank, where: {works: tank}}
#   remedy: Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - {title: "California Plumbing Code, Table 1502.4, as restated by a county", place: "irrigation field column", standing: published}
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

excused contains {"subject": c.subject, "reason": "watertight pipes and fittings are not held to this distance"} if {
	some c in input.clearances.well
	c.works in {"pipe", "fitting"}
}
