# METADATA
# title: The flow is one that Washington's greywater rules are for.
# description: >-
#   Beyond this flow a system is no greywater system any more and falls under the law on large sewage systems.
#   Where sewage goes to a small septic system the text stops at much less.
# custom:
#   subjects: system
#   level: fail
#   measures:
#     - {field: daily_flow, bound: at most, limit: greatest_flow, where: {sewage: sewer}}
#     - {field: daily_flow, bound: at most, limit: greatest_flow_on_septic, where: {sewage: septic tank}}
#     - {field: sewage}
#   remedy: >-
#     Leave fixtures out until the flow is {short} less, or ask the health department under which rules it can
#     be permitted.
#   sources:
#     - title: Washington Administrative Code 246-274-300 (2011)
#       place: (3)(b) and (e)
#       standing: published
package greysill.flow.greatest_flow

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.sewage == "sewer"
	s.daily_flow <= data.limits.greatest_flow.value
}

proved contains s.subject if {
	some s in input.system
	s.sewage == "septic tank"
	s.daily_flow <= data.limits.greatest_flow_on_septic.value
}
