# METADATA
# title: The outlet of a planted gravel bed can be set higher and lower.
# description: >-
#   A bed is flooded while its plants take, lowered for the winter and to let roots follow the water down, and raised
#   as gravel clogs. With a fixed outlet none of that can be done.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: outlet_adjustable}
#   remedy: >-
#     Draw an outlet that can be set for {subject}: a standing pipe that turns or comes in lengths, in a covered box.
#   sources:
#     - title: Eawag, sheet on horizontal subsurface flow wetlands, read in a copy
#       place: variable outlet
#       standing: published
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
package greysill.bed.outlet_adjustable

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.outlet_adjustable == true
}
