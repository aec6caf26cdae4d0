# METADATA
# title: The surface of the gravel is level.
# description: >-
#   The water in a bed is level. Where the gravel above it is not, water shows at the low places while roots dry out
#   at the high ones, and the bed cannot be flooded evenly against weeds.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: surface_range, bound: at most, limit: surface_range}
#   remedy: >-
#     Rake the gravel of {subject} level, or build the low edge up. As drawn, its highest and lowest points differ by
#     {surface_range}; with more than {limit} the water is too near the surface at one place or too deep at another.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(ix)
#       standing: published
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
package greysill.bed.surface_level

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.surface_range <= data.limits.surface_range.value
}
