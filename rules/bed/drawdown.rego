# METADATA
# title: A planted gravel bed can be emptied, and the valve for it reached.
# description: >-
#   Sooner or later a pipe, a liner or the inlet has to be repaired. A bed that cannot be emptied has to be pumped or
#   dug out with the water in it.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: drawdown_at_floor}
#     - {field: drawdown_accessible}
#   remedy: >-
#     Draw a draw-down pipe of {subject} with its invert at the lowest point of the floor, and with a valve that can
#     be reached without digging. Let it run only to where the greywater may go.
#   caution: pathogens
#   sources:
#     - title: Eawag, sheet on horizontal subsurface flow wetlands, read in a copy
#       place: the bed can be flooded and drained
#       standing: published
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
package greysill.bed.drawdown

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.drawdown_at_floor == true
	b.drawdown_accessible == true
}
