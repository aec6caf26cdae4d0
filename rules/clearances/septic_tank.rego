# METADATA
# title: Greywater works keep their distance from every septic tank.
# description: >-
#   Water beside a septic tank leaks into it and washes its sludge out into the disposal field, and digging there takes
#   the support from its walls.
# custom:
#   subjects: clearances.septic_tank
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: septic_tank_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: septic_tank_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: septic_tank
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
package greysill.clearances.septic_tank

import rego.v2

proved contains c.subject if {
	some c in input.clearances.septic_tank
	c.works == "field"
	c.distance >= data.limits.septic_tank_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.septic_tank
	c.works == "tank"
	c.distance >= data.limits.septic_tank_from_tank.value
}

excused contains {"subject": c.subject, "reason": "pipes and fittings may lead to the septic tank"} if {
	some c in input.clearances.septic_tank
	c.works in {"pipe", "fitting"}
}
