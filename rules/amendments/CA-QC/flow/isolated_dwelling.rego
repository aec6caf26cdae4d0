# METADATA
# title: The flow is one that the regulation for isolated dwellings applies to.
# description: >-
#   Above this flow another law applies, with plans and a leave of its own. The regulation counts all the waste water
#   of the house, of which greywater is a part, so a house near the limit is past it.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: quebec_daily_flow}
#   remedy: >-
#     Ask the municipality which law applies: the greywater alone is {short} above what the regulation goes up to.
#   sources:
#     - title: Regulation respecting waste water disposal systems for isolated dwellings, Q-2, r. 22
#       place: s. 1 to 3
#       standing: published
package greysill.flow.isolated_dwelling

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.quebec_daily_flow.value
}
