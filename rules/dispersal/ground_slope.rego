# METADATA
# title: Mulch basins and trenches lie on ground that is not too steep.
# description: >-
#   On a steep slope, what soaks in at the top comes out again below, and a trench that should lie level along
#   the slope is hard to dig and easy to lose.
# custom:
#   subjects: soakage
#   level: warn
#   measures:
#     - {field: ground_slope, bound: at most, limit: ground_slope}
#   remedy: >-
#     Move {subject} to flatter ground, or ask an engineer: the ground there slopes {ground_slope}.
#   caution: digging
#   sources:
#     - title: Idaho Administrative Code 58.01.03.008
#       place: natural slope of the ground of a drainfield
#       standing: published
package greysill.dispersal.ground_slope

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.ground_slope <= data.limits.ground_slope.value
}
