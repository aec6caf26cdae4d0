# METADATA
# title: The sludge of a settling basin is taken out before its room for sludge is full.
# description: >-
#   A full basin settles nothing, and nobody sees it. The drawing has to say how often the sludge is taken out.
#   The rate is that of whole sewage from as many people, and greywater brings less, so this is on the safe side.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: sludge_room_filled, bound: at most, limit: sludge_room_filled}
#   remedy: >-
#     Have the sludge of {subject} taken out at least once in {least_clean_out_interval}, not once in
#     {clean_out_interval}, or give it more room for sludge than {sludge_volume}.
#   caution: pathogens
#   sources:
#     - title: N. F. Gray, Environmental Technology 16 (1995) 795, abstract
#       place: accumulation of sludge in septic tanks
#       standing: published
#     - title: The room for sludge is not overfilled
#       standing: common practice
package greysill.settling.clean_out

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.kind == "settling basin"
	s.sludge_room_filled <= data.limits.sludge_room_filled.value
}

excused contains {"subject": s.subject, "reason": "a surge tank evens out the flow and is not there to settle"} if {
	some s in input.settling
	s.kind == "surge tank"
}
