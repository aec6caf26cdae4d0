# METADATA
# title: Water softener backwash ends in the sewer or a septic tank and stays out of the greywater train.
# description: >-
#   The backwash is brine. Its salt kills the plants of a bed or basin and closes the pores of clay soil for good.
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
#     Lead {subject} past the greywater train to the sewer or septic connection. Where the authority wants brine
#     elsewhere, ask it for a variance.
#   sources:
#     - title: Montana Code Annotated 15-24-3201
#       place: definition of gray water, which leaves softener water out
#       standing: published
#     - title: Salt kills plants and closes clay soil
#       standing: common practice
package greysill.sources.brine

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "kitchen waste", "clear water"}
}

proved contains i.subject if {
	some i in input.inflows
	i.enters_train == false
	i.ends_in_sewer == true
}
