# METADATA
# title: A tank overflows to the sewer or the on-site sewage system.
# description: >-
#   Texas lets no greywater overflow onto the ground. A full tank in the garden would spill it where children play.
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
#     - title: Texas Administrative Code, title 30, section 210.83
#       place: (d)
#       standing: published
package greysill.overflow.tank_to_sewer

import rego.v2

proved contains h.subject if {
	some h in input.holdings
	h.kind in {"surge tank", "settling basin"}
	h.overflow_ends_in_sewer == true
}

excused contains {"subject": h.subject, "reason": "no storage tank; the base rule keeps its overflow off the ground"} if {
	some h in input.holdings
	h.kind in {"planted gravel bed", "mulch basin", "infiltration trench", "pond"}
}
