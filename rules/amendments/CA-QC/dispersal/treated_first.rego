# METADATA
# title: Grey water is treated before it is let into the soil.
# description: >-
#   Quebec lets no grey water into the environment untreated, kitchen water or not. What reaches a mulch basin or
#   trench by an overflow of a tank or bed has not been treated either.
# custom:
#   subjects: soakage
#   level: fail
#   measures:
#     - {field: treated_first}
#     - {field: untreated_sources}
#   remedy: >-
#     Lead the water of its untreated sources ({untreated_sources}) through a planted gravel bed ahead of {subject},
#     and its overflows to the sewer or septic connection; and ask the municipality whether it takes the bed for
#     treatment.
#   caution: pathogens
#   sources:
#     - title: Regulation respecting waste water disposal systems for isolated dwellings, Q-2, r. 22
#       place: s. 1 to 3
#       standing: published
package greysill.dispersal.treated_first

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.treated_first == true
}
