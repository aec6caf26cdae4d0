# METADATA
# title: The water in a planted gravel bed stays below the gravel's surface.
# description: >-
#   Dry gravel on top keeps people, pets and mosquitoes from the greywater. Once water shows between the stones, the bed
#   is an open pool. No reviewer can accept a bed whose water level is not drawn.
# custom:
#   subjects: beds
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: water_below_surface, bound: at least, limit: water_below_surface_least}
#   remedy: >-
#     Lower the outlet level of {subject} by {short}, or raise the gravel's surface by as much where it is lowest.
#   caution: pathogens
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(ix)
#       standing: published
package greysill.bed.water_level

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.water_below_surface >= data.limits.water_below_surface_least.value
}
