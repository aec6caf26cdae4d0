# METADATA
# title: The house is small enough for Oregon's first tier.
# description: >-
#   The general permit for the first tier goes by bedrooms as well as by flow, since they outlast whoever lives
#   in the house today.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: bedrooms, bound: at most, limit: first_tier_bedrooms}
#   remedy: >-
#     Apply for the permit of the tier above: the house has {bedrooms} bedrooms, and the first tier is for
#     {limit}.
#   sources:
#     - title: Oregon Department of Environmental Quality, Tier 1 general permit GEN 2401
#       standing: published
package greysill.flow.first_tier_bedrooms

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.bedrooms <= data.limits.first_tier_bedrooms.value
}
