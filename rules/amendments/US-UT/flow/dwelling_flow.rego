# METADATA
# title: The system is worked out for the flow that Utah counts by bedrooms.
# description: >-
#   Utah sizes by the dwelling, since families come and go. Everything in this drawing is worked out by occupants, and a
#   system for fewer people than the code counts stands full when the house does.
# custom:
#   subjects: demand
#   level: fail
#   measures:
#     - {field: utah_flow_share, bound: at least, limit: utah_dwelling_flow}
#     - {field: daily_flow_by_occupants}
#     - {field: utah_flow}
#   remedy: >-
#     Enter as many occupants as make {utah_flow} of greywater, at 25 gal/d each for bathing and 15 gal/d each for laundry,
#     and size the works for it. As drawn they are worked out for {daily_flow_by_occupants}.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401 (2024)
#       place: Table 1; of a part of the fixtures, Table 2
#       standing: published
package greysill.flow.dwelling_flow

import rego.v2

proved contains d.subject if {
	some d in input.demand
	d.utah_flow_share >= data.limits.utah_dwelling_flow.value
}
