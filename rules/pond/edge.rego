# METADATA
# title: Whoever falls into a pond can climb out.
# description: >-
#   A child or a dog that slips down steep, slimy sides does not get out alone, and a smooth liner is worse than
#   earth. A shelf along the edge, or sides that are flat all the way, give a foothold.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: inside_slope, bound: at most, limit: pond_side_slope}
#     - {field: has_shelf}
#   remedy: >-
#     Flatten the sides of {subject} until they slope no more than {limit}, or draw a shelf along its edge with
#     its width and the depth of water over it.
#   caution: open_water
#   sources:
#     - title: A shelf or a flat side to climb out by
#       standing: common practice
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: no side steeper than 2 to 1
#       standing: from memory
package greysill.pond.edge

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.has_shelf == false
	b.inside_slope <= data.limits.pond_side_slope.value
}

excused contains {"subject": b.subject, "reason": "a shelf to climb out by is drawn"} if {
	some b in input.ponds
	b.has_shelf == true
}
