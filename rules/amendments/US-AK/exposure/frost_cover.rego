# METADATA
# title: Beds, basins and trenches have the cover against frost that the mildest part of Alaska asks for.
# description: >-
#   Where soil or gravel freezes, water comes up over it and builds ice. The state asks for the cover over
#   treatment and absorption areas too, and takes an inch of insulation for a foot of soil, which the drawing
#   cannot show over them; so this is a warning.
# custom:
#   subjects: discharges
#   level: warn
#   measures:
#     - {field: cover, bound: at least, limit: frost_cover_anywhere}
#   remedy: >-
#     Add {short} of cover over the place where {subject} lets the water in, or insulate it (a twelfth of that
#     thickness of insulation does the same) and write it on the plan.
#   caution: pathogens
#   sources:
#     - title: Alaska Administrative Code 18 AAC 72.630
#       place: (c)
#       standing: published
package greysill.exposure.frost_cover

import rego.v2

proved contains d.subject if {
	some d in input.discharges
	d.cover >= data.limits.frost_cover_anywhere.value
}
