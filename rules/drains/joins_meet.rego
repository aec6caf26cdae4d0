# METADATA
# title: Every pipe is drawn up to what it drains.
# description: >-
#   Where a pipe ends short of the next part, the drawing does not say how the water gets there, and somebody settles it
#   in the trench with whatever fall is left.
# custom:
#   subjects: joins
#   level: warn
#   measures:
#     - {field: meets}
#   remedy: >-
#     Draw {part} and {next} so that they meet. As drawn, {gap} lies between them in plan. How exact places are meant to
#     be is said by the distance among the tolerances.
#   sources:
#     - title: A plan shows pipes from end to end
#       standing: common practice
package greysill.drains.joins_meet

import rego.v2

proved contains j.subject if {
	some j in input.joins
	j.meets == true
}
