# METADATA
# title: Every reach of drain and overflow pipe falls steeply enough.
# description: >-
#   Hair, lint and soap settle where the water runs slowly, and water that stands in a flat or rising reach freezes,
#   goes foul and backs up into the house. No reviewer can accept a pipe whose fall is not drawn.
# custom:
#   subjects: reaches
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: slope, bound: at least, limit: drain_slope}
#   remedy: >-
#     Lower the downstream end of {subject}, or raise its upstream end, until the slope is at least {limit}. As drawn,
#     the fall is {fall} over {length}; a negative fall means that the pipe rises.
#   caution: digging
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 9
#       standing: published
#     - title: Chicago Plumbing Code 18-29-704.1, for smaller slopes of pipes from 3 in up
#       place: Table 18-29-704.1
#       standing: published
package greysill.drains.slope

import rego.v2

proved contains r.subject if {
	some r in input.reaches
	r.slope >= data.limits.drain_slope.value
}
