# METADATA
# title: The second route of every diverter is as wide as what leads to it.
# description: >-
#   While the diverter is turned, the second route has to take everything: a bath let out and a washer at once. Where it
#   is narrower, hair and lint catch at the step and the water comes up in the lowest shower.
# custom:
#   subjects: diverters
#   level: fail
#   measures:
#     - {field: second_to_first, bound: at least, limit: second_route_width}
#   remedy: >-
#     Make every pipe of the second route of {subject} at least {widest_way_in} wide inside, as what leads to it is. As
#     drawn, its narrowest is {narrowest_second}.
#   caution: sewer_connection
#   sources:
#     - title: Texas Administrative Code, title 30, section 210.83
#       place: (d)(2), of combined systems, all water can be diverted
#       standing: published
#     - title: Chicago Plumbing Code 18-29-704.2
#       place: size never reduced in the direction of flow
#       standing: published
package greysill.diversion.full_flow

import rego.v2

proved contains d.subject if {
	some d in input.diverters
	d.second_route != "none"
	d.second_to_first >= data.limits.second_route_width.value
}

excused contains {"subject": d.subject, "reason": "no second route is drawn, which diversion/second_route judges"} if {
	some d in input.diverters
	d.second_route == "none"
}
