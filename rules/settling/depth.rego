# METADATA
# title: A settling basin is deep enough that the inflow does not stir up its sludge.
# description: >-
#   Where the water is shallow, every inflow lifts what has settled and carries it on to the next part.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: water_depth, bound: at least, limit: settling_depth}
#   remedy: >-
#     Lower the floor of {subject} by {short}, or set its outlet higher by as much.
#   caution: digging
#   sources:
#     - title: State manuals of erosion and sediment control
#       place: sediment basin, 2 to 3 ft
#       standing: from memory
package greysill.settling.depth

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.kind == "settling basin"
	s.water_depth >= data.limits.settling_depth.value
}

excused contains {"subject": s.subject, "reason": "a surge tank evens out the flow and is not there to settle"} if {
	some s in input.settling
	s.kind == "surge tank"
}
