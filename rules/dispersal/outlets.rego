# METADATA
# title: A mulch basin has at least the outlets that Utah's table wants.
# description: >-
#   One outlet soaks one spot, which turns black and sour while the rest of the basin stays dry. The basis is the
#   greatest flow for each outlet in Table 8 of the Utah rule.
# custom:
#   subjects: soakage
#   level: warn
#   measures:
#     - {field: utah_outlets_share, bound: at least, limit: mulch_outlets}
#     - {field: outlets}
#     - {field: utah_outlets_wanted}
#   remedy: >-
#     Let the water into {subject} by more outlets, or lead some of it to another basin: {flow} wants
#     {utah_outlets_wanted} by Utah's table, and {outlets} is drawn.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 8
#       standing: published
package greysill.dispersal.outlets

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.kind == "mulch basin"
	s.flow > 0
	s.utah_outlets_share >= data.limits.mulch_outlets.value
}

excused contains {"subject": s.subject, "reason": "a trench spreads its water by its pipe"} if {
	some s in input.soakage
	s.kind == "infiltration trench"
}

excused contains {"subject": s.subject, "reason": "no greywater comes to it but by an overflow"} if {
	some s in input.soakage
	s.kind == "mulch basin"
	s.flow == 0
}
