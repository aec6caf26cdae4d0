# METADATA
# title: A settling basin is emptied before its sludge takes up half of its water.
# description: >-
#   Sludge takes away the room in which water comes to rest. Past the half, new sludge leaves with the water
#   instead of staying. The drawing has to say at what depth it is taken out.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: sludge_share, bound: at most, limit: sludge_share}
#   remedy: >-
#     Draw a smaller sludge_depth for {subject}, or more volume: its room for sludge is {sludge_volume} of
#     {volume}.
#   caution: pathogens
#   sources:
#     - title: State manuals of erosion and sediment control
#       place: cleaned out when half of the wet storage is full
#       standing: from memory
package greysill.settling.sludge_room

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.kind == "settling basin"
	s.sludge_share <= data.limits.sludge_share.value
}

excused contains {"subject": s.subject, "reason": "a surge tank evens out the flow and is not there to settle"} if {
	some s in input.settling
	s.kind == "surge tank"
}
