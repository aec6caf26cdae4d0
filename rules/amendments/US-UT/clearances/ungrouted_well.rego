# METADATA
# title: What lets greywater into the ground keeps twice the distance from a well that is not grouted.
# description: >-
#   Without grout the space round the casing is a way straight down, past all the soil that would clean the water.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: utah_ungrouted_well_from_field, where: {casing: not grouted}}
#     - {field: casing}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or show by the driller's record that {feature} is grouted.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3, ungrouted private source
#       standing: published
package greysill.clearances.ungrouted_well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.utah_ungrouted_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "the well is grouted"} if {
	some c in input.clearances.well
	c.works == "field"
	c.casing == "grouted"
	c.distance < data.limits.utah_ungrouted_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "Utah asks no more here of what lets no greywater out"} if {
	some c in input.clearances.well
	c.works in {"tank", "pipe", "fitting"}
}
