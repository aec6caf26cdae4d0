# METADATA
# title: A settling basin is long and narrow.
# description: >-
#   In a square basin water takes the short way from inlet to outlet, and half of the basin stands idle. A long
#   one makes all of the water pass where it can settle.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: length_to_width, bound: at least, limit: settling_length_to_width}
#   remedy: >-
#     Draw {subject} longer and narrower, with the inlet at one end and the outlet at the other: its length is
#     {length_to_width} times its width, where {limit} is wanted.
#   caution: digging
#   sources:
#     - title: State manuals of erosion and sediment control
#       place: sediment basin, length to width 2 to 1
#       standing: from memory
package greysill.settling.shape

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.kind == "settling basin"
	s.length_to_width >= data.limits.settling_length_to_width.value
}

excused contains {"subject": s.subject, "reason": "a surge tank evens out the flow and is not there to settle"} if {
	some s in input.settling
	s.kind == "surge tank"
}
