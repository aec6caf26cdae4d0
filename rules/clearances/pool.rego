# METADATA
# title: Greywater works keep their distance from swimming pools.
# description: >-
#   Germs that seep through the ground or run over it end in water that people swallow. And a pool leaks and is emptied,
#   into soil that should take greywater.
# custom:
#   subjects: clearances.pool
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: pool_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: pool_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: Clark County Code 24.17.120, Washington
#       place: Table IV, foundation and pool
#       standing: published
#     - title: Massachusetts regulations 310 CMR 15.211
#       place: in-ground pool, which asks 20 ft
#       standing: published
package greysill.clearances.pool

import rego.v2

proved contains c.subject if {
	some c in input.clearances.pool
	c.works == "field"
	c.distance >= data.limits.pool_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.pool
	c.works == "tank"
	c.distance >= data.limits.pool_from_tank.value
}

excused contains {"subject": c.subject, "reason": "a watertight pipe or fitting is not held to this distance"} if {
	some c in input.clearances.pool
	c.works in {"pipe", "fitting"}
}
