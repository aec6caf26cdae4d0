# METADATA
# title: The water of a pond with fish can hold the oxygen that they need at its warmest.
# description: >-
#   The warmer the water and the higher the site, the less oxygen water can hold, and at night and under ice
#   there is less than that. Where even full balance with the air is too little, no pump of air helps.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: oxygen_saturation, bound: at least, limit: fish_oxygen}
#   remedy: >-
#     Keep {subject} cooler, with shade and more depth, or leave the fish out: at its warmest its water can
#     hold {oxygen_saturation} of oxygen.
#   caution: open_water
#   sources:
#     - title: Least oxygen for warm-water fish in ponds
#       standing: from memory
package greysill.pond.oxygen

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.stocked == true
	b.oxygen_saturation >= data.limits.fish_oxygen.value
}

excused contains {"subject": b.subject, "reason": "no fish are drawn in it"} if {
	some b in input.ponds
	b.stocked == false
}
