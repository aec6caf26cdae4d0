# METADATA
# title: A pond that water from the house reaches keeps the distance of a lagoon from the property line.
# description: >-
#   The neighbour has not agreed to live beside standing water from a house. At the end of the train a pond is a
#   lagoon to whoever inspects it, treated water or not, unless it is shown to be none.
# custom:
#   subjects: clearances.property_line
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: alberta_lagoon_from_property_line}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, leave it out, or ask the safety codes officer whether it
#     counts as a lagoon.
#   caution: open_water
#   sources:
#     - title: Alberta Private Sewage Systems Standard of Practice, as an inspection agency restates it
#       place: lagoon for a single dwelling to the property line
#       standing: published
package greysill.clearances.lagoon_property_line

import rego.v2

proved contains c.subject if {
	some c in input.clearances.property_line
	c.part_kind == "pond"
	c.distance >= data.limits.alberta_lagoon_from_property_line.value
}

excused contains {"subject": c.subject, "reason": "it is no pond"} if {
	some c in input.clearances.property_line
	c.part_kind != "pond"
}
