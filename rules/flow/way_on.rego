# METADATA
# title: Every part that passes water on says where.
# description: >-
#   Water that comes to the end of what is drawn comes up somewhere: in the yard, at the neighbour's or in the house. An
#   overflow or a second route does not say where the water goes on an ordinary day.
# custom:
#   subjects: parts
#   level: fail
#   measures:
#     - {field: drains_on}
#   remedy: >-
#     Draw where the water of {subject} goes next and name it in the entry to: a part, down to a sewer or septic
#     connection, mulch basin or infiltration trench.
#   caution: pathogens
#   sources:
#     - title: Water runs on until something takes it
#       standing: common practice
package greysill.flow.way_on

import rego.v2

proved contains p.subject if {
	some p in input.parts
	p.drains_on == true
}

excused contains {"subject": p.subject, "reason": "a way may end here"} if {
	some p in input.parts
	p.kind in {"sewer connection", "septic connection", "mulch basin", "infiltration trench"}
	p.drains_on == false
}
