# METADATA
# title: The pores of a basin's mulch hold what the laundry lets go at once.
# description: >-
#   A washer empties in a minute or two, far faster than soil drinks. The mulch has to take that in and let it
#   sink, or it stands and runs off. Only its pores hold water, and fewer of them as it rots.
# custom:
#   subjects: soakage
#   level: warn
#   measures:
#     - {field: porosity_wanted, bound: at most, limit: mulch_surge}
#     - {field: surge_volume}
#     - {field: mulch_volume}
#   remedy: >-
#     Make {subject} larger or deeper in mulch, or lead the laundry to more basins: {surge_volume} comes at
#     once, and it has {mulch_volume} of mulch.
#   caution: pathogens
#   sources:
#     - title: California Plumbing Code 1602.11.2
#       place: a mulch basin is large enough for the peak flow
#       standing: from memory
#     - title: Pores of wood chips, as reviews of woodchip bioreactors give them
#       standing: from memory
package greysill.dispersal.mulch_holds_surge

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.kind == "mulch basin"
	s.porosity_wanted <= data.limits.mulch_surge.value
}

excused contains {"subject": s.subject, "reason": "an infiltration trench holds gravel, not mulch"} if {
	some s in input.soakage
	s.kind == "infiltration trench"
}
