# METADATA
# title: The volume is one that the plan permits without a resource consent.
# description: >-
#   Up to this volume the plan permits the discharge of greywater to land as long as its other conditions hold. Above
#   it a resource consent is needed before anything is dug.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: wellington_greywater}
#   remedy: >-
#     Apply for a resource consent, or leave fixtures out until the flow is {short} less.
#   sources:
#     - title: Greater Wellington Regional Council, Discharges to Land plan, an older plan
#       place: Rule 4, discharges of greywater
#       standing: published
package greysill.flow.permitted_activity

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.wellington_greywater.value
}
