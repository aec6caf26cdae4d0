# METADATA
# title: The liner reaches over the edge of the bed and is anchored there.
# description: >-
#   A liner that ends at the edge slips down under the weight of the gravel. Then water leaves over it, and surface
#   water comes in behind it.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: liner_reaches_over_edge}
#   remedy: >-
#     Draw the liner of {subject} wider than the bed: up to the rim, over it, and into a small trench all round.
#   caution: digging
#   sources:
#     - title: A liner's edge is brought over the rim and anchored
#       standing: common practice
package greysill.bed.liner_edge

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.liner_reaches_over_edge == true
}
