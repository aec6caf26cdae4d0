# METADATA
# title: Where a greywater pipe crosses a water line, the water line passes well above.
# description: >-
#   A leak runs down. When the pressure drops, a water pipe below a leaking greywater pipe draws in what drips on it, and
#   the household drinks it.
# custom:
#   subjects: crossings
#   level: fail
#   measures:
#     - {field: vertical_clearance, bound: at least, limit: crossing_drinking_water, where: {service_kind: water}}
#     - {field: above}
#   remedy: >-
#     Lay {pipe} at least {limit} below {service} where they cross, or have the water line laid over it by a licensed
#     plumber. Keep joints of both well away from the crossing.
#   caution: drinking_water
#   sources:
#     - title: California Code of Regulations, title 22, section 64572
#       place: (d), mains 1 ft above a sewage line at crossings
#       standing: published
#     - title: Chicago Plumbing Code 18-29-603.2.1, for 18 in
#       standing: published
package greysill.services.crossing_drinking_water

import rego.v2

proved contains c.subject if {
	some c in input.crossings
	c.service_kind == "water"
	c.above == "service"
	c.vertical_clearance >= data.limits.crossing_drinking_water.value
}

excused contains {"subject": c.subject, "reason": "the service is no water line"} if {
	some c in input.crossings
	c.service_kind in {"line voltage", "low voltage", "gas", "telecom", "sewer", "irrigation"}
}

excused contains {"subject": c.subject, "reason": "that they meet is judged by services/crossing"} if {
	some c in input.crossings
	c.service_kind == "water"
	c.above == "neither"
}
