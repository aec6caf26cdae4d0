# METADATA
# title: Coarse stone surrounds the inlet header and the pipe to the outlet.
# description: >-
#   The gravel at the inlet takes most of the lint and grease. Coarse stone there spreads the water before it meets
#   the fine gravel, keeps the holes of the header free and can be dug out and washed. At the outlet it keeps gravel
#   out of the pipe.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: inlet_stone, bound: at least, limit: end_stone_least}
#     - {field: inlet_stone, bound: at most, limit: end_stone_greatest}
#     - {field: outlet_stone, bound: at least, limit: end_stone_least}
#     - {field: outlet_stone, bound: at most, limit: end_stone_greatest}
#   remedy: >-
#     Lay coarse stone within the limits shown round the inlet header of {subject} and round the pipe to its outlet. As
#     drawn it measures {inlet_stone} at the inlet and {outlet_stone} at the outlet, off by {short}.
#   sources:
#     - title: U.S. EPA 832-F-00-023 (2000), fact sheet on subsurface flow wetlands
#       place: figure 1
#       standing: published
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
package greysill.bed.end_stone

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.inlet_stone >= data.limits.end_stone_least.value
	b.inlet_stone <= data.limits.end_stone_greatest.value
	b.outlet_stone >= data.limits.end_stone_least.value
	b.outlet_stone <= data.limits.end_stone_greatest.value
}
