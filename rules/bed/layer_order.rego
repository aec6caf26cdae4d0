# METADATA
# title: No layer of media is finer than the one above it.
# description: >-
#   Fine stones under coarse ones fill with what washes down from above, and the coarse layer on top does not hold
#   young plants. The usual order is small stones for planting on top, larger ones for the water below.
# custom:
#   subjects: layers
#   level: warn
#   measures:
#     - {field: no_finer_than_above}
#     - {field: size}
#   remedy: >-
#     Lay the layers of {bed} with the smaller stones above the larger. As drawn, the stones of {subject} measure
#     {size}, less than those above them.
#   sources:
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
package greysill.bed.layer_order

import rego.v2

proved contains l.subject if {
	some l in input.layers
	l.no_finer_than_above == true
}
