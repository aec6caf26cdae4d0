# METADATA
# title: Greywater reaches the garden by hand alone.
# description: >-
#   Georgia lets untreated greywater be used without a permit where somebody carries it out in a can, a little
#   at a time, and sees where it goes. What is piped goes out whether the soil takes it or not, and lies outside
#   that leave.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: water}
#     - {field: enters_train}
#     - {field: route}
#   remedy: >-
#     Lead {subject} to the sewer or septic connection and carry out by can what the garden needs, or ask the
#     county board of health whether and as what it permits the works.
#   caution: pathogens
#   sources:
#     - title: Official Code of Georgia Annotated 31-3-5.2 (2010)
#       standing: published
package greysill.sources.by_hand_alone

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water == "greywater"
	i.enters_train == false
}

excused contains {"subject": i.subject, "reason": "it is no greywater"} if {
	some i in input.inflows
	i.water in {"toilet waste", "kitchen waste", "clear water", "brine"}
}
