# METADATA
# title: Water stays in a planted gravel bed long enough to be cleaned.
# description: >-
#   The germs on the stones need days to take the dissolved matter out of the water. The time is nominal, by the least
#   porosity: real water takes short cuts and stays for less, and less again as the gravel clogs.
# custom:
#   subjects: bed_flow
#   level: warn
#   measures:
#     - {field: least_detention, bound: at least, limit: detention_least}
#     - {field: flow}
#   remedy: >-
#     Make {subject} larger or its gravel cleaner, or lead less water to it: as drawn, the pores below the water hold
#     {least_pore_volume}, and {flow} come in.
#   sources:
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       place: chapter 2
#       standing: published
#     - title: Iowa Administrative Code 567-69.15 (2024)
#       place: 7 d, of sewage
#       standing: published
#     - title: Morel and Diener, Greywater management in low and middle-income countries (2006)
#       standing: from memory
package greysill.treatment.detention

import rego.v2

proved contains b.subject if {
	some b in input.bed_flow
	b.least_detention >= data.limits.detention_least.value
}
