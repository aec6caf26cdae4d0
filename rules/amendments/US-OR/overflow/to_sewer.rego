# METADATA
# title: Whatever is too much for a tank, bed or settling basin goes to the sewer or septic tank.
# description: >-
#   Excess greywater comes when the soil is wet already, in rain and thaw. Oregon lets it go to the sewer or
#   septic system and nowhere else, not into another basin either.
# custom:
#   subjects: holdings
#   level: fail
#   measures:
#     - {field: has_overflow}
#     - {field: overflow_ends_in_sewer}
#     - {field: overflow_route}
#   remedy: >-
#     Draw an overflow from {subject} that runs by gravity to the sewer or septic connection. As drawn it goes
#     here: {overflow_route}.
#   caution: sewer_connection
#   sources:
#     - title: Oregon Administrative Rules 340-053-0090 (2011)
#       place: (1)(a)(A)
#       standing: published
#     - title: Oregon Administrative Rules 340-053-0080 (2011)
#       place: (5)
#       standing: published
package greysill.overflow.to_sewer

import rego.v2

proved contains h.subject if {
	some h in input.holdings
	h.kind in {"surge tank", "planted gravel bed", "settling basin"}
	h.has_overflow == true
	h.overflow_ends_in_sewer == true
}

excused contains {"subject": h.subject, "reason": "what one basin or trench leaves over the next takes up"} if {
	some h in input.holdings
	h.kind in {"mulch basin", "infiltration trench"}
}

excused contains {"subject": h.subject, "reason": "a pond runs over with rain, and wants a permit of its own"} if {
	some h in input.holdings
	h.kind == "pond"
}
