# METADATA
# title: The second route of every diverter reaches the sewer or a septic tank.
# description: >-
#   A diverter is only as good as where it diverts to. Water turned away from the train is sewage, and nothing but a
#   sewer or septic tank may take it.
# custom:
#   subjects: diverters
#   level: fail
#   measures:
#     - {field: second_route_reaches_sewer}
#     - {field: second_route}
#   remedy: >-
#     Lead the second route of {subject} to the sewer or septic connection, with no part of the greywater train on the
#     way.
#   caution: sewer_connection
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(n)
#       standing: published
#     - title: Oregon Administrative Rules 340-053-0080
#       place: (5)
#       standing: published
#     - title: Utah Administrative Code R317-401-3 (2024)
#       place: 3.2(c)
#       standing: published
package greysill.diversion.second_route

import rego.v2

proved contains d.subject if {
	some d in input.diverters
	d.second_route_reaches_sewer == true
}
