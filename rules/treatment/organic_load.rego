# METADATA
# title: A planted gravel bed is large enough for the matter that the greywater brings.
# description: >-
#   A bed takes in only so much air. Where more comes in than it can burn, it turns foul, smells and clogs. The matter is
#   counted as BOD5, the oxygen that germs use up on it in five days. The load is taken for the strongest greywater that a source gives, since nobody has measured this house's.
# custom:
#   subjects: bed_flow
#   level: warn
#   measures:
#     - {field: greatest_areal_load, bound: at most, limit: areal_load_greatest}
#   remedy: >-
#     Make {subject} larger, or lead less water to it: its area of {area} takes {greatest_areal_load} of BOD5, where
#     at most {limit} is wanted.
#   sources:
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       place: chapter 2, 80 kg/ha a day
#       standing: published
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
#     - title: Morel and Diener, Greywater management in low and middle-income countries (2006)
#       standing: from memory
package greysill.treatment.organic_load

import rego.v2

proved contains b.subject if {
	some b in input.bed_flow
	b.greatest_areal_load <= data.limits.areal_load_greatest.value
}
