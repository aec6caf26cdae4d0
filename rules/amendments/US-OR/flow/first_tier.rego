# METADATA
# title: The flow is small enough for Oregon's first tier.
# description: >-
#   Up to this flow the general permit for the first tier can be had for untreated greywater of a single
#   dwelling or a duplex. Whatever is more wants another permit, which asks for more.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: first_tier_flow}
#   remedy: >-
#     Apply for the permit of the tier above, or leave fixtures out until the flow is {short} less.
#   sources:
#     - title: Oregon Administrative Rules 340-053-0110 (2011)
#       place: (1)(a)
#       standing: published
package greysill.flow.first_tier

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.first_tier_flow.value
}
