# METADATA
# title: A planted gravel bed is neither a strip nor a wall.
# description: >-
#   In a long narrow bed the water piles up at the inlet and comes to the surface. In a short wide one it hardly
#   passes through gravel, and finds short cuts. The texts draw the lines in different places; only what is outside
#   all of them is a warning here.
# custom:
#   subjects: bed_flow
#   level: warn
#   measures:
#     - {field: length_to_width, bound: at least, limit: length_to_width_least}
#     - {field: length_to_width, bound: at most, limit: length_to_width_greatest}
#   remedy: >-
#     Change the outline of {subject}, or let the water in and out at other sides. As drawn it runs {length} along the
#     course of the water and is {width} wide, {length_to_width} to 1.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(v)
#       standing: published
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       standing: from memory
package greysill.bed.length_to_width

import rego.v2

proved contains b.subject if {
	some b in input.bed_flow
	b.length_to_width >= data.limits.length_to_width_least.value
	b.length_to_width <= data.limits.length_to_width_greatest.value
}
