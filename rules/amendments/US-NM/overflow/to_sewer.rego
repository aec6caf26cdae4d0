# METADATA
# title: Tanks, basins and beds overflow to the sewer or the septic system.
# description: >-
#   What a full tank or bed cannot take is untreated greywater at the worst moment. In the garden it comes up where the
#   ground is soaked already.
# custom:
#   subjects: holdings
#   level: fail
#   measures:
#     - {field: overflow_ends_in_sewer}
#     - {field: overflow_route}
#   remedy: >-
#     Lead the overflow of {subject} by gravity to the sewer or septic connection. As drawn it goes here: {overflow_route}.
#   caution: sewer_connection
#   sources:
#     - title: New Mexico Administrative Code 20.7.3.810
#       place: A
#       standing: published
package greysill.overflow.to_sewer

import rego.v2

proved contains h.subject if {
	some h in input.holdings
	h.kind in {"surge tank", "settling basin", "planted gravel bed"}
	h.overflow_ends_in_sewer == true
}

excused contains {"subject": h.subject, "reason": "what soaks in is the end of the system; the base rule holds its overflow"} if {
	some h in input.holdings
	h.kind in {"mulch basin", "infiltration trench"}
}

excused contains {"subject": h.subject, "reason": "a pond falls under another law"} if {
	some h in input.holdings
	h.kind == "pond"
}
