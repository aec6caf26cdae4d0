# METADATA
# title: Every part that holds water overflows to a safe end.
# description: >-
#   Filters clog, outlets freeze and washers run twice. What a full part cannot take finds a way out, and unless the
#   drawing gives it one it comes up in the yard or back into the house. Several states let an overflow end in the sewer
#   or a septic tank only.
# custom:
#   subjects: holdings
#   level: fail
#   measures:
#     - {field: has_overflow}
#     - {field: overflow_ends_safely}
#     - {field: overflow_route}
#   remedy: >-
#     Draw an overflow from {subject} that runs by gravity to the sewer or septic connection, or to a mulch basin or
#     infiltration trench where that is allowed.
#   caution: pathogens
#   sources:
#     - title: Texas Administrative Code, title 30, section 210.83
#       place: (d)
#       standing: published
#     - title: Oregon Administrative Rules 340-053-0090
#       place: (1)(a)(A)
#       standing: published
#     - title: New Mexico Administrative Code 20.7.3.810
#       place: A
#       standing: published
package greysill.overflow.path

import rego.v2

proved contains h.subject if {
	some h in input.holdings
	h.has_overflow == true
	h.overflow_ends_safely == true
}
