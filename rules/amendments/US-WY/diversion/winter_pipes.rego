# METADATA
# title: Pipes that are used in winter do not freeze.
# description: >-
#   Greywater comes in small amounts that trickle along the bottom of a pipe, and in frozen ground they freeze
#   there, layer on layer, until nothing passes. A pipe that lies below the frost or in the warm stays open.
# custom:
#   subjects: pipe_winter
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: winter}
#     - {field: insulated_cover}
#     - {field: frost_depth}
#   remedy: >-
#     Lay {subject} below the frost, insulate it or lead it through a heated space and say so, or let the bypass
#     season cover every month that freezes. As drawn, its least cover with its insulation counts as
#     {insulated_cover} of soil, and the frost goes {frost_depth} deep.
#   caution: digging
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (a)(iii)
#       standing: published
package greysill.diversion.winter_pipes

import rego.v2

proved contains w.subject if {
	some w in input.pipe_winter
	w.winter in {"never freezes", "below the frost"}
}

excused contains {"subject": w.subject, "reason": "the system is not used in the months that freeze"} if {
	some w in input.pipe_winter
	some c in input.cold_season
	w.winter == "in the frost"
	c.bypass_covers_freezing_months == true
}
