# METADATA
# title: No buried service runs through what is dug, unless it lies well below.
# description: >-
#   A line across a bed or pond is struck while it is dug, and cannot be reached for repair once the liner is over it.
# custom:
#   subjects: dug_services
#   level: fail
#   measures:
#     - {field: undug, bound: at least, limit: tolerance_zone}
#   remedy: >-
#     Move {part} off {service}, or have whoever owns the {service_kind} line lay it round {part}. As drawn, the
#     ground left over it is {undug}; a negative height means that the dig reaches it.
#   caution: digging
#   sources:
#     - title: Missouri Revised Statutes 319.015
#       place: approximate location, 2 ft each side
#       standing: published
#     - title: Common Ground Alliance, Best Practices
#       place: practices 5.15 and 5.19
#       standing: published
package greysill.services.under_digs

import rego.v2

proved contains s.subject if {
	some s in input.dug_services
	s.undug >= data.limits.tolerance_zone.value
}
