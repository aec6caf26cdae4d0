# METADATA
# title: Mulch or soil reaches well above the greywater in a mulch basin.
# description: >-
#   Mulch settles and rots, and a basin takes a whole washer load at once. The cover above the highest greywater is what
#   keeps it out of sight and reach until it has soaked away.
# custom:
#   subjects: discharges
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: cover, bound: at least, limit: utah_media_over_greywater}
#   remedy: >-
#     Add {short} of mulch or soil over the place where {subject} lets the water in, or set that place lower.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: 7.1(b)
#       standing: published
package greysill.exposure.media_over_greywater

import rego.v2

proved contains d.subject if {
	some d in input.discharges
	d.kind == "mulch basin"
	d.cover >= data.limits.utah_media_over_greywater.value
}

excused contains {"subject": d.subject, "reason": "the clause is on mulch basins"} if {
	some d in input.discharges
	d.kind in {"planted gravel bed", "infiltration trench"}
}
