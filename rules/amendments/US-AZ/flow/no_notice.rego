# METADATA
# title: The flow is small enough to need no notice to the department.
# description: >-
#   The first type of greywater permit is for private residences below 400 gal/d. Above it the third type wants a notice
#   before anything is built, and no water standing anywhere.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: arizona_no_notice_flow}
#   remedy: >-
#     Give notice under the third type of permit, which goes up to 3,000 gal/d, or leave fixtures out until the flow is
#     {short} less.
#   sources:
#     - title: Arizona Administrative Code R18-9-711 (2001), as copied in full, now R18-9-D701
#       place: Type 1
#       standing: published
#     - title: Arizona Administrative Code R18-9-D702
#       place: (A)
#       standing: published
package greysill.flow.no_notice

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.arizona_no_notice_flow.value
}
