# METADATA
# title: Pipes that lead greywater to the garden are wide enough for lint and hair.
# description: >-
#   Outside the house greywater runs slowly over long ways, with nothing behind it to push. A pipe that serves a basin
#   under a sink blocks there.
# custom:
#   subjects: pipes
#   level: warn
#   measures:
#     - {field: diameter, bound: at least, limit: drain_diameter}
#   remedy: >-
#     Lay {subject} at least {limit} wide.
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 9, 2 to 4 in nominal
#       standing: published
package greysill.drains.diameter

import rego.v2

proved contains p.subject if {
	some p in input.pipes
	p.leads_to_train == true
	p.diameter >= data.limits.drain_diameter.value
}

excused contains {"subject": p.subject, "reason": "it leads to the sewer like any drain of the house"} if {
	some p in input.pipes
	p.leads_to_train == false
}
