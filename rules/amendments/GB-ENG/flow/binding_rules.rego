# METADATA
# title: The flow is one that may go into the ground without a permit.
# description: >-
#   Up to this flow the general binding rules let sewage, greywater among it, into the ground without a permit, as
#   long as their other conditions hold. They count all the sewage that is let out there.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: england_ground_discharge}
#   remedy: >-
#     Apply to the Environment Agency for a permit, or leave fixtures out until the flow is {short} less.
#   sources:
#     - title: General binding rules for small sewage discharges to the ground, England
#       place: discharge to the ground
#       standing: published
package greysill.flow.binding_rules

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.england_ground_discharge.value
}
