# METADATA
# title: Whoever falls into a pond finds a flat side or a shallow shelf to climb out by.
# description: >-
#   A child or a dog that slips down steep, slimy sides does not get out alone, and a smooth liner is worse than
#   earth. A shelf along the edge, or sides that are flat all the way, give a foothold.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: inside_slope, bound: at most, limit: pond_side_slope, where: {climb_out_by: sides}}
#     - {field: shelf_width, bound: at least, limit: shelf_width, where: {climb_out_by: shelf}}
#     - {field: shelf_depth, bound: at most, limit: shelf_depth, where: {climb_out_by: shelf}}
#     - {field: climb_out_by}
#   remedy: >-
#     Flatten the sides of {subject}, or draw a shelf along its edge with its width and the depth of water over it, wide
#     enough to stand on and no deeper than a child can.
#   caution: open_water
#   sources:
#     - title: A shelf or a flat side to climb out by
#       standing: common practice
#     - title: A foothold is as wide as a foot is long
#       standing: common practice
#     - title: Maryland Stormwater Design Manual (2000)
#       place: aquatic bench round a pond
#       standing: from memory
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: no side steeper than 2 to 1
#       standing: from memory
package greysill.pond.edge

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.climb_out_by == "sides"
	b.inside_slope <= data.limits.pond_side_slope.value
}

proved contains b.subject if {
	some b in input.ponds
	b.climb_out_by == "shelf"
	b.shelf_width >= data.limits.shelf_width.value
	b.shelf_depth <= data.limits.shelf_depth.value
}
