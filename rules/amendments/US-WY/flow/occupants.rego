# METADATA
# title: The flow is worked out for two people in each bedroom.
# description: >-
#   Wyoming counts two people for each bedroom, more than the plumbing codes do. Every figure that hangs on the
#   flow, areas and tanks among them, comes out too small when fewer are counted.
# custom:
#   subjects: system
#   level: fail
#   measures:
#     - {field: occupants_per_bedroom, bound: at least, limit: occupants_per_bedroom}
#     - {field: occupants}
#     - {field: bedrooms}
#   remedy: >-
#     State occupants of the dwelling, {limit} for each of its {bedrooms} bedrooms: as drawn the flow is worked
#     out for {occupants}.
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (b)(i)(A)
#       standing: published
package greysill.flow.occupants

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.occupants_per_bedroom >= data.limits.occupants_per_bedroom.value
}
