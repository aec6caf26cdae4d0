# METADATA
# title: Pipes keep their distance from streams, lakes, ponds and wetlands.
# description: >-
#   Pipes crack and joints leak, in frozen ground more than elsewhere, and nobody sees where it goes. Alaska
#   holds every wastewater component to one distance, pipes among them.
# custom:
#   subjects: clearances.surface_water
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: surface_water_from_pipe, where: {works: pipe}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: Alaska Administrative Code 18 AAC 72.020
#       place: (b)
#       standing: published
package greysill.clearances.surface_water_pipe

import rego.v2

proved contains c.subject if {
	some c in input.clearances.surface_water
	c.works == "pipe"
	c.distance >= data.limits.surface_water_from_pipe.value
}

excused contains {"subject": c.subject, "reason": "the rule clearances/surface_water has its distance"} if {
	some c in input.clearances.surface_water
	c.works in {"tank", "field"}
}

excused contains {"subject": c.subject, "reason": "a fitting is part of its pipe"} if {
	some c in input.clearances.surface_water
	c.works == "fitting"
}
