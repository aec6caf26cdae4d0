# METADATA
# title: The flow is small enough for a permit by rule.
# description: >-
#   Up to this flow nobody has to wait for a permit; the information asked for is filed before building. Beyond
#   it a permit of its own is wanted.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: permit_by_rule_flow}
#   remedy: >-
#     Apply for a permit of its own, or leave fixtures out until the flow is {short} less.
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (a)(i)(C)
#       standing: published
package greysill.flow.permit_by_rule

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.permit_by_rule_flow.value
}
