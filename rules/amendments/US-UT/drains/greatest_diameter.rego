# METADATA
# title: Pipes that lead greywater to the garden are no wider than Utah's table has them.
# description: >-
#   A trickle in a wide pipe spreads thin and leaves its lint behind. Sizes are nominal, so a bore a little over the limit
#   is no more than a warning.
# custom:
#   subjects: pipes
#   level: warn
#   measures:
#     - {field: diameter, bound: at most, limit: utah_pipe_diameter_greatest}
#   remedy: >-
#     Lay {subject} no wider than {limit}, or show that this is its nominal size.
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 9, 2 to 4 in
#       standing: published
package greysill.drains.greatest_diameter

import rego.v2

proved contains p.subject if {
	some p in input.pipes
	p.leads_to_train == true
	p.diameter <= data.limits.utah_pipe_diameter_greatest.value
}

excused contains {"subject": p.subject, "reason": "it leads to the sewer like any drain of the house"} if {
	some p in input.pipes
	p.leads_to_train == false
}
