# METADATA
# title: The first tank or bed has room for what a washer or bathtub lets go at once.
# description: >-
#   A washer or a bathtub empties within minutes. What does not fit backs up into the pipe, or runs over the top and
#   leaves its lint there.
# custom:
#   subjects: surges
#   level: warn
#   measures:
#     - {field: share_of_room, bound: at most, limit: surge_share}
#     - {field: first_parts}
#   remedy: >-
#     Make room for the {surge_volume} of {subject} in {first_parts}, where there is room for {room}, or put a surge tank
#     before it.
#   caution: pathogens
#   sources:
#     - title: California Plumbing Code 1602.2.2, as a digest restates it
#       place: the system takes the peak flow
#       standing: published
package greysill.flow.surge_held

import rego.v2

proved contains s.subject if {
	some s in input.surges
	s.meets_holding == true
	s.share_of_room <= data.limits.surge_share.value
}

excused contains {
	"subject": s.subject,
	"reason": "no tank or bed holds its water first; what mulch and trenches take up has rules of its own",
} if {
	some s in input.surges
	s.meets_holding == false
}
