# METADATA
# title: Every pipe has the cover against frost that most of Alaska asks for.
# description: >-
#   A line that freezes stays frozen until summer, and the house has no drain. In the southwest, in the
#   southeast and on the Valdez coast less is enough; the drawing does not tell where in the state it lies. An
#   inch of insulation counts as a foot of soil.
# custom:
#   subjects: pipe_winter
#   level: warn
#   measures:
#     - {field: insulated_cover, bound: at least, limit: frost_cover_inland}
#   remedy: >-
#     Lay {subject} at least {short} deeper, or insulate it (a twelfth of that thickness of insulation does the
#     same), unless the site lies where less is enough. As drawn, its least cover with its insulation counts as
#     {insulated_cover} of soil.
#   caution: digging
#   sources:
#     - title: Alaska Administrative Code 18 AAC 72.630
#       place: (c)
#       standing: published
package greysill.drains.frost_cover_inland

import rego.v2

proved contains p.subject if {
	some p in input.pipe_winter
	p.insulated_cover >= data.limits.frost_cover_inland.value
}
