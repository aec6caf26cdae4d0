# METADATA
# title: Greywater soaks in well back from every retaining wall and break of slope.
# description: >-
#   Water in the ground runs out where the ground ends: through the face of a wall or a cut, where people walk, and it
#   pushes the wall or the bank over on its way.
# custom:
#   subjects: clearances.ground
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: slope_break_from_field, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or ask an engineer what the {feature_kind} can stand.
#   caution: digging
#   sources:
#     - title: Massachusetts regulations 310 CMR 15.211
#       place: downhill slope
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1, distribution line to ground surface on sloping ground
#       standing: published
#     - title: Clark County Code 24.17.120, Washington
#       place: Table IV, cut or bank, which asks 25 to 50 ft
#       standing: published
package greysill.clearances.slope_break

import rego.v2

proved contains c.subject if {
	some c in input.clearances.ground
	c.works == "field"
	c.distance >= data.limits.slope_break_from_field.value
}

excused contains {"subject": c.subject, "reason": "it lets no water into the ground"} if {
	some c in input.clearances.ground
	c.works in {"tank", "pipe", "fitting"}
}
