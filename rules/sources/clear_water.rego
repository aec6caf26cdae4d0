# METADATA
# title: No sump, foundation, roof, condensate or storm water joins greywater that no bed has treated.
# description: >-
#   One storm brings more water than the house gives in weeks. It flushes the bed out, drowns the plants and pushes
#   greywater that nothing has cleaned yet to the surface. What an air conditioner drips is little, but the plumbing
#   code does not count it as greywater.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: water}
#     - {field: joins_untreated}
#     - {field: route}
#   remedy: >-
#     Lead {subject} to a place of its own, away from the greywater train and downhill of it, where the storm drainage
#     rules let it go.
#   caution: pathogens
#   sources:
#     - title: Administrative Rules of South Dakota 74:53:01:17
#       place: no footing, roof or sump drainage into the system
#       standing: published
#     - title: ICC code change proposal P152-09/10, International Plumbing Code
#       place: definition of gray water, which lists its sources
#       standing: published
#     - title: Washington Administrative Code 246-274-440
#       place: footing and roof drains kept away
#       standing: published
package greysill.sources.clear_water

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "kitchen waste", "brine"}
}

proved contains i.subject if {
	some i in input.inflows
	i.joins_untreated == false
}
