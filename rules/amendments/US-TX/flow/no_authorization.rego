# METADATA
# title: The flow is small enough to need no authorization.
# description: >-
#   Below an average of 400 gal/d a private residence in Texas needs none. From there on the commission may ask for one, so
#   find out before anything is dug.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: texas_no_authorization_flow}
#   remedy: >-
#     Ask the Commission on Environmental Quality whether it wants an authorization, or leave fixtures out until the flow is
#     {short} less.
#   sources:
#     - title: Texas Administrative Code, title 30, section 210.83
#       place: (a)
#       standing: published
package greysill.flow.no_authorization

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.texas_no_authorization_flow.value
}
