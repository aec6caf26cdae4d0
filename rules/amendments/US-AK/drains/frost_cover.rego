# METADATA
# title: Every pipe has the cover against frost that the mildest part of Alaska asks for.
# description: >-
#   A line that freezes stays frozen until summer, and the house has no drain. Less cover than this is enough
#   nowhere in the state. An inch of insulation counts as a foot of soil.
# custom:
#   subjects: pipe_winter
#   level: fail
#   measures:
#     - {field: insulated_cover, bound: at least, limit: frost_cover_anywhere}
#   remedy: >-
#     Lay {subject} at least {short} deeper, or insulate it: a twelfth of that thickness of insulation does the
#     same. As drawn, its least cover with its insulation counts as {insulated_cover} of soil.
#   caution: digging
#   sources:
#     - title: Alaska Administrative Code 18 AAC 72.630
#       place: (c)
#       standing: published
package greysill.drains.frost_cover

import rego.v2

proved contains p.subject if {
	some p in input.pipe_winter
	p.insulated_cover >= data.limits.frost_cover_anywhere.value
}
