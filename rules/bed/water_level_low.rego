# METADATA
# title: The water in a planted gravel bed stays within reach of young roots.
# description: >-
#   New plants stand in the upper gravel. Where the water lies deeper than that they dry out in their first summer, and
#   the gravel above the water does no work.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: water_below_surface, bound: at most, limit: water_below_surface_greatest}
#   remedy: >-
#     Raise the outlet level of {subject} by {short}, or take that much gravel off its surface.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(ix)
#       standing: published
package greysill.bed.water_level_low

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.water_below_surface <= data.limits.water_below_surface_greatest.value
}
