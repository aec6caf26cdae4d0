# METADATA
# title: A trench as deep as a person's chest has a way out.
# description: >-
#   Nobody climbs out of a trench by its wall in time, and the climbing brings the wall down.
# custom:
#   subjects: cuts
#   level: warn
#   measures:
#     - {field: deepest_cut, bound: at most, limit: cut_without_exit}
#   remedy: >-
#     Put a ladder or ramp within 25 ft of everybody who works in the cut of {subject}, {deepest_cut} deep, and say so
#     (trench_exits); or set {subject} less deep.
#   caution: digging
#   sources:
#     - title: Code of Federal Regulations, title 29, section 1926.651, as a training page restates it
#       place: (c)(2), an exit within 25 ft from 4 ft on
#       standing: published
package greysill.construction.exit

import rego.v2

proved contains c.subject if {
	some c in input.cuts
	c.deepest_cut <= data.limits.cut_without_exit.value
}

excused contains {"subject": c.subject, "reason": "the plan has a ladder or ramp in it"} if {
	some c in input.cuts
	c.deepest_cut > data.limits.cut_without_exit.value
	c.has_exit == true
}
