# METADATA
# title: The flow is small enough to be designed without a registered professional.
# description: >-
#   Above this flow the code wants the plans drawn by a registered design professional. Other states draw their lines
#   elsewhere and ask for other things above them, so find out which tier this system falls into.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: daily_flow}
#   remedy: >-
#     Have the plans drawn and sealed by a registered design professional, or leave fixtures out until the flow is
#     {short} less.
#   sources:
#     - title: Uniform Plumbing Code 2018, as adopted by Washington
#       place: section 1501, exceptions 1 and 2
#       standing: published
package greysill.flow.tier

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.daily_flow.value
}
