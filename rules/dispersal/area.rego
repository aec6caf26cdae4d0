# METADATA
# title: A mulch basin or trench has at least the area that Utah's tables want.
# description: >-
#   Soil takes only so much water a day. Where more is let in than it takes, greywater comes up, smells and runs
#   to the neighbour. The basis is Utah's loading rates for greywater, Table 8 for mulch basins and Table 4 for
#   trenches, which are among the most generous; tables for sewage ask for many times the area.
# custom:
#   subjects: soakage
#   level: fail
#   measures:
#     - {field: utah_area_share, bound: at least, limit: soil_area}
#     - {field: area}
#     - {field: utah_area_wanted}
#   remedy: >-
#     Make {subject} larger or share its water with another: {flow} wants {utah_area_wanted} by Utah's table,
#     and {area} is drawn.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 8; for trenches R317-401-6, Table 4
#       standing: published
package greysill.dispersal.area

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.flow > 0
	s.utah_area_share >= data.limits.soil_area.value
}

excused contains {"subject": s.subject, "reason": "no greywater comes to it but by an overflow"} if {
	some s in input.soakage
	s.flow == 0
}
