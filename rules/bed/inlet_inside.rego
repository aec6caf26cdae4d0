# METADATA
# title: The inlet header of a planted gravel bed lies within the bed.
# description: >-
#   The header lets greywater out along its whole length. Where it reaches beyond the liner, untreated water goes into
#   the ground beside the bed, and past the gravel.
# custom:
#   subjects: beds
#   level: fail
#   measures:
#     - {field: inlet_inside}
#   remedy: >-
#     Draw the inlet header of {subject} inside the bed's outline, or correct the outline.
#   caution: pathogens
#   sources:
#     - title: The header of a lined bed lies inside the liner
#       standing: common practice
package greysill.bed.inlet_inside

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.inlet_inside == true
}
