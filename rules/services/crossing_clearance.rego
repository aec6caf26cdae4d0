# METADATA
# title: Where a greywater pipe crosses a buried service, there is room between the two.
# description: >-
#   Lines that nearly touch rub through as the ground settles, and whoever repairs one later strikes the other.
# custom:
#   subjects: crossings
#   level: warn
#   measures:
#     - {field: vertical_clearance, bound: at least, limit: crossing_clearance}
#   remedy: >-
#     Leave {short} more between {pipe} and {service} ({service_kind}) where they cross, or ask whoever owns {service}
#     what they accept.
#   caution: digging
#   sources:
#     - title: Code of Federal Regulations, title 49, section 192.325
#       place: clearance of gas transmission lines
#       standing: from memory
package greysill.services.crossing_clearance

import rego.v2

proved contains c.subject if {
	some c in input.crossings
	c.joins == false
	c.above in {"pipe", "service"}
	c.service_kind in {"line voltage", "low voltage", "gas", "telecom", "sewer", "irrigation"}
	c.vertical_clearance >= data.limits.crossing_clearance.value
}

excused contains {"subject": c.subject, "reason": "water lines are judged by services/crossing_drinking_water"} if {
	some c in input.crossings
	c.service_kind == "water"
}

excused contains {"subject": c.subject, "reason": "that they meet is judged by services/crossing"} if {
	some c in input.crossings
	c.service_kind in {"line voltage", "low voltage", "gas", "telecom", "sewer", "irrigation"}
	c.above == "neither"
}

excused contains {"subject": c.subject, "reason": "the pipe ends there, at its connection"} if {
	some c in input.crossings
	c.service_kind in {"line voltage", "low voltage", "gas", "telecom", "sewer", "irrigation"}
	c.above in {"pipe", "service"}
	c.joins == true
}
