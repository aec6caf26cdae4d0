# METADATA
# title: A pond that water from the house reaches keeps the distance of a lagoon from buildings.
# description: >-
#   Standing water from the house smells, breeds mosquitoes and draws children. At the end of the train a pond is a
#   lagoon to whoever inspects it, treated water or not, unless it is shown to be none.
# custom:
#   subjects: clearances.building
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: alberta_lagoon_from_building}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, leave it out, or ask the safety codes officer whether it
#     counts as a lagoon.
#   caution: open_water
#   sources:
#     - title: Alberta Private Sewage Systems Standard of Practice, as an inspection agency restates it
#       place: lagoon for a single dwelling to a building
#       standing: published
package greysill.clearances.lagoon_building

import rego.v2

proved contains c.subject if {
	some c in input.clearances.building
	c.part_kind == "pond"
	c.distance >= data.limits.alberta_lagoon_from_building.value
}

excused contains {"subject": c.subject, "reason": "it is no pond"} if {
	some c in input.clearances.building
	c.part_kind != "pond"
}
