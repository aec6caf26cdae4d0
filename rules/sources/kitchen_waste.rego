# METADATA
# title: Kitchen waste ends in the sewer or a septic tank and stays out of the greywater train.
# description: >-
#   Grease and food scraps clog gravel and mulch, smell, and feed germs. Most codes count kitchen water as sewage. Some,
#   Oregon's among them, take it after primary treatment; an amendment for such a place can say so.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: water}
#     - {field: enters_train}
#     - {field: ends_in_sewer}
#     - {field: ends}
#     - {field: route}
#   remedy: >-
#     Lead {subject} straight to the sewer or septic connection, with no part of the greywater train on its way.
#   caution: pathogens
#   sources:
#     - title: Montana Code Annotated 15-24-3201
#       place: definition of gray water
#       standing: published
#     - title: Texas Administrative Code, title 30, section 210.82
#       place: (a)(4)
#       standing: published
#     - title: Arizona Revised Statutes 49-201
#       place: definition of gray water
#       standing: published
#     - title: Oregon Administrative Rules 340-053-0090, for kitchen water after primary treatment
#       place: (1)(b)
#       standing: published
package greysill.sources.kitchen_waste

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "clear water", "brine"}
}

proved contains i.subject if {
	some i in input.inflows
	i.enters_train == false
	i.ends_in_sewer == true
}
