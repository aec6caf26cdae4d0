# METADATA
# title: The drawing lists what goes through the liner and how it is sealed.
# description: >-
#   A liner leaks where pipes go through it. What is not drawn is cut on site and sealed with whatever is at hand; it
#   cannot be mended under the gravel.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: liner_holes_drawn}
#   remedy: >-
#     List what goes through the liner of {subject}, at least the pipe to its outlet, and how each hole is sealed: a
#     boot of the liner's own material with clamps, or a flange.
#   sources:
#     - title: USDA NRCS in California, material specification 521A (1996)
#       place: boots of the liner's own material, battens and clamps
#       standing: published
package greysill.bed.liner_holes

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.liner_holes_drawn == true
}
