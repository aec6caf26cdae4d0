# METADATA
# title: The water in a planted gravel bed stays within reach of young roots.
# description: >-
#   New plants stand in the upper gravel. Where the water lies deeper than that they dry out in their first summer, and
#   the gravel above the water does no work. The highest place of the gravel counts.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: water_below_highest, bound: at most, limit: water_below_surface_greatest}
#     - {field: surface_range, bound: at most, limit: surface_range}
#   remedy: >-
#     Raise the outlet level of {subject} by {short}, or take that much gravel off its surface where it is highest.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(ix)
#       standing: published
package greysill.bed.water_level_low

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.surface_range <= data.limits.surface_range.value
	b.water_below_highest <= data.limits.water_below_surface_greatest.value
}

excused contains {"subject": b.subject, "reason": "its surface is not level, which bed/surface_level judges"} if {
	some b in input.beds
	b.surface_range > data.limits.surface_range.value
}
