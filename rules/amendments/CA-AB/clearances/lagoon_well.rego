# METADATA
# title: A pond that water from the house reaches keeps the distance of a lagoon from wells and springs.
# description: >-
#   What seeps out of a pond all year round finds the well. A pond at the end of the train is a lagoon to whoever
#   inspects it, treated water or not, unless it is shown to be none.
# custom:
#   subjects: clearances.well
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: alberta_lagoon_from_water}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, leave it out, or ask the safety codes officer whether it
#     counts as a lagoon.
#   caution: open_water
#   sources:
#     - title: Alberta Private Sewage Systems Standard of Practice, as an inspection agency restates it
#       place: lagoon for a single dwelling to a water source
#       standing: published
package greysill.clearances.lagoon_well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.part_kind == "pond"
	c.distance >= data.limits.alberta_lagoon_from_water.value
}

excused contains {"subject": c.subject, "reason": "it is no pond"} if {
	some c in input.clearances.well
	c.part_kind != "pond"
}
