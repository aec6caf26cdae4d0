# METADATA
# title: A mulch basin is deep enough to take its water in without its showing.
# description: >-
#   Mulch rots and settles. In a shallow basin the water soon stands between the chips, where flies breed and
#   dogs drink.
# custom:
#   subjects: soakage
#   level: warn
#   measures:
#     - {field: depth, bound: at least, limit: mulch_basin_depth}
#   remedy: >-
#     Dig {subject} {short} deeper and fill it with mulch.
#   caution: digging
#   sources:
#     - title: California Plumbing Code 1602.11.2
#       place: not less than 10 in below finished grade
#       standing: from memory
package greysill.dispersal.basin_depth

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.kind == "mulch basin"
	s.depth >= data.limits.mulch_basin_depth.value
}

excused contains {"subject": s.subject, "reason": "the depth of a trench is that of its pipe and gravel"} if {
	some s in input.soakage
	s.kind == "infiltration trench"
}
