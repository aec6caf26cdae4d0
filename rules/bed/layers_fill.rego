# METADATA
# title: The layers of media drawn fill a planted gravel bed from its floor to its surface.
# description: >-
#   Layers that are thinner together than the bed is deep leave somebody to settle on site what the rest is filled with,
#   and layers that are thicker do not fit in. A plan that does not show the media cannot be ordered from.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: layers_fill}
#     - {field: layers_thickness}
#     - {field: mean_depth}
#   remedy: >-
#     Draw the layers of {subject} so that they come to its depth: they are {layers_thickness} thick together, the bed is
#     {mean_depth} deep on the mean. Leave the thickness of the lowest out to let it fill what is left.
#   sources:
#     - title: Layers of media come to the depth of the bed
#       standing: common practice
package greysill.bed.layers_fill

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.layers_fill == true
}
