# METADATA
# title: What lets greywater into the ground keeps well away from a basement.
# description: >-
#   Water in the ground finds the joint between the wall and the floor of a basement and comes in there. The drawing
#   says of the house alone whether it has one, so every building is taken to have what the house has.
# custom:
#   subjects: clearances.building
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: alberta_basement_from_field, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or show the inspector that {feature} itself has no
#     basement.
#   caution: digging
#   sources:
#     - title: Alberta Private Sewage Systems Standard of Practice, as an inspection agency restates it
#       place: field trench to a basement
#       standing: published
package greysill.clearances.basement

import rego.v2

proved contains c.subject if {
	some c in input.clearances.building
	c.works == "field"
	c.distance >= data.limits.alberta_basement_from_field.value
}

excused contains {"subject": c.subject, "reason": "the house has no basement"} if {
	some c in input.clearances.building
	some s in input.system
	c.works == "field"
	c.distance < data.limits.alberta_basement_from_field.value
	s.basement == false
}

excused contains {"subject": c.subject, "reason": "the distance is that of a field"} if {
	some c in input.clearances.building
	c.works in {"tank", "pipe", "fitting"}
}
