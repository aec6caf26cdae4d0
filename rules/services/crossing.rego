# METADATA
# title: A pipe passes above or below every buried service that it crosses.
# description: >-
#   Two lines drawn at one level meet in the trench. Whoever lays the second one bends it over the first, and its fall is
#   gone, or cuts it.
# custom:
#   subjects: crossings
#   level: fail
#   measures:
#     - {field: above}
#   remedy: >-
#     Raise or lower {pipe} where it crosses {service}, or lead it round. As drawn, the height between the two is
#     {vertical_clearance}; a negative height means that they meet.
#   caution: digging
#   sources:
#     - title: Two lines cannot lie in one place
#       standing: common practice
package greysill.services.crossing

import rego.v2

proved contains c.subject if {
	some c in input.crossings
	c.joins == false
	c.above in {"pipe", "service"}
}

excused contains {"subject": c.subject, "reason": "the pipe ends there, at its connection"} if {
	some c in input.crossings
	c.joins == true
}
