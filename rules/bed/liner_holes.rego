# METADATA
# title: Every hole through the liner is drawn with its seal.
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
#     - title: Pipes go through a liner in boots or flanges
#       standing: common practice
package greysill.bed.liner_holes

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.liner_holes_drawn == true
}
