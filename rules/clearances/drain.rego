# METADATA
# title: Greywater works keep their distance from ditches, storm drains and neighbours' drains.
# description: >-
#   A drain draws the groundwater towards it and hands it on, to a neighbour or a stream, with whatever is in it.
#   Nothing is cleaned on that way.
# custom:
#   subjects: clearances.drainage
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: drain_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: drain_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1, water ditches
#       standing: published
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3, streams, ditches and lakes
#       standing: published
#     - title: Massachusetts regulations 310 CMR 15.211
#       place: drains that intercept groundwater
#       standing: published
package greysill.clearances.drain

import rego.v2

proved contains c.subject if {
	some c in input.clearances.drainage
	c.works == "field"
	c.distance >= data.limits.drain_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.drainage
	c.works == "tank"
	c.distance >= data.limits.drain_from_tank.value
}

excused contains {"subject": c.subject, "reason": "a watertight pipe or fitting is not held to this distance"} if {
	some c in input.clearances.drainage
	c.works in {"pipe", "fitting"}
}
