# METADATA
# title: The flow is small enough for Washington's first tier.
# description: >-
#   Up to this flow the state asks least. The first tier is for light greywater of one family at one diverter,
#   by gravity alone, with no pump and no tank. Whatever is more belongs to a higher tier, which asks for more
#   on paper and in the ground.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: first_tier_flow}
#   remedy: >-
#     Apply under the tier above, or leave fixtures out until the flow is {short} less.
#   sources:
#     - title: Washington Administrative Code 246-274-100 (2011)
#       place: (1)(a) to (g)
#       standing: published
package greysill.flow.first_tier

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.first_tier_flow.value
}
