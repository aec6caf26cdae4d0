# METADATA
# title: What lets greywater into the ground keeps its distance from seepage pits.
# description: >-
#   A pit has as much sewage as its soil can take. Greywater that seeps into it drowns it, and sewage comes to the surface.
#   California asks more of a pit than of a leach field.
# custom:
#   subjects: clearances.disposal_field
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: california_seepage_pit_from_field, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1, seepage pit or cesspool
#       standing: published
package greysill.clearances.seepage_pit

import rego.v2

proved contains c.subject if {
	some c in input.clearances.disposal_field
	c.feature_kind == "seepage pit"
	c.works == "field"
	c.distance >= data.limits.california_seepage_pit_from_field.value
}

excused contains {"subject": c.subject, "reason": "a leach field goes by the base rule"} if {
	some c in input.clearances.disposal_field
	c.feature_kind == "disposal field"
}

excused contains {"subject": c.subject, "reason": "it lets no greywater into the ground"} if {
	some c in input.clearances.disposal_field
	c.feature_kind == "seepage pit"
	c.works in {"tank", "pipe", "fitting"}
}
