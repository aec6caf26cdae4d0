# METADATA
# title: By the rate of the European guideline, what leaves a planted gravel bed is clean enough for the soil.
# description: >-
#   BOD5 is the oxygen that germs use up in five days on what the water carries. Water that still carries much clogs the soil that is to take it up, and comes to the surface
#   there. The rule goes by the rate of the European guideline, a cautious one that needs no temperature; the sets of
#   constants disagree, and some foresee less cleaning of strong greywater.
# custom:
#   subjects: effluent
#   level: warn
#   measures:
#     - {field: greatest_effluent_in_cold, bound: at most, limit: effluent_bod_greatest}
#     - {field: basis}
#   remedy: >-
#     Make {bed} larger, or lead less water to it, or let the water pass a second bed: by {basis},
#     {greatest_effluent_in_cold} of BOD5 leave it, where at most {limit} is wanted.
#   sources:
#     - title: Wisconsin Administrative Code SPS 382.70
#       place: Table 382.70-1, subsurface infiltration and irrigation
#       standing: published
#     - title: Arizona Administrative Code R18-9-E318
#       place: (B), 20 mg/L
#       standing: published
#     - title: EC/EWPCA, European design and operations guidelines for reed bed treatment systems (1990)
#       place: rate of 0.1 m a day
#       standing: from memory
package greysill.treatment.effluent

import rego.v2

proved contains e.subject if {
	some e in input.effluent
	e.basis == "EC/EWPCA 1990"
	e.greatest_effluent_in_cold <= data.limits.effluent_bod_greatest.value
}

excused contains {"subject": e.subject, "reason": "the rule goes by the European guideline of 1990"} if {
	some e in input.effluent
	e.basis != "EC/EWPCA 1990"
}
