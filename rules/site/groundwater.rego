# METADATA
# title: Greywater soaks in well above the groundwater.
# description: >-
#   What cleans greywater is soil with air in it. Where the groundwater stands close under the bottom, germs get into it,
#   and from there into wells and streams; in a wet spring the water does not soak away at all.
# custom:
#   subjects: soakage
#   level: fail
#   measures:
#     - {field: above_groundwater, bound: at least, limit: bottom_above_groundwater}
#   remedy: >-
#     Raise the bottom of {subject} by at least {short}, or move it to where the groundwater is deeper: as drawn, its
#     bottom is {bottom_depth} below the ground.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-272B-06100
#       place: of large sewage systems
#       standing: published
#     - title: Ontario Building Code 8.4.2
#       place: of greywater leaching pits, 900 mm
#       standing: published
#     - title: Utah Administrative Code R317-401-6 (2024)
#       place: 6.3, which asks 2 ft
#       standing: published
#     - title: New Mexico Administrative Code 20.7.3.810
#       place: D, which asks 5 ft
#       standing: published
package greysill.site.groundwater

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.above_groundwater >= data.limits.bottom_above_groundwater.value
}
