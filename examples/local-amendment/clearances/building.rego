# METADATA
# title: What lets greywater into the ground keeps its distance from every building.
# description: >-
#   Water in the ground finds its way into cellars and under footings.
# custom:
#   subjects: clearances.building
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: tarn_building_from_field, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: digging
#   sources:
#     - title: Tarn County Greywater Ordinance (2024)
#       place: Table 2
#       standing: published
package greysill.clearances.building

import rego.v2

proved contains c.subject if {
	some c in input.clearances.building
	c.works == "field"
	c.distance >= data.limits.tarn_building_from_field.value
}

excused contains {"subject": c.subject, "reason": "the county wants no distance of what lets nothing out"} if {
	some c in input.clearances.building
	c.works in {"tank", "pipe", "fitting"}
}
