# METADATA
# title: A deep cut is sloped back, shored or boxed.
# description: >-
#   A cubic yard of soil weighs more than a ton. When a trench wall goes, whoever stands in it is buried before anybody
#   can call out, and a wall of firm soil gives no warning.
# custom:
#   subjects: cuts
#   level: fail
#   measures:
#     - {field: deepest_cut, bound: at most, limit: unprotected_cut}
#   remedy: >-
#     Set {subject} less deep, or have the cut of {deepest_cut} sloped back, shored or boxed by people who know how, and
#     say so (cave_in_protection).
#   caution: digging
#   sources:
#     - title: Code of Federal Regulations, title 29, section 1926.652, as a contractor's summary restates it
#       place: protection from 5 ft on, or less where the ground may cave in
#       standing: published
package greysill.construction.cave_in

import rego.v2

proved contains c.subject if {
	some c in input.cuts
	c.deepest_cut <= data.limits.unprotected_cut.value
}

excused contains {"subject": c.subject, "reason": "the plan has it sloped back, shored or boxed"} if {
	some c in input.cuts
	c.deepest_cut > data.limits.unprotected_cut.value
	c.protected == true
}
