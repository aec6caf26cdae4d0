# METADATA
# title: The soil lets water through neither too fast nor too slowly.
# description: >-
#   Through very fast soil greywater reaches the groundwater before the soil has cleaned it. In very slow soil it
#   comes up. The rate has to come from a test on the place.
# custom:
#   subjects: soil
#   level: warn
#   measures:
#     - {field: percolation, bound: at least, limit: percolation_fastest}
#     - {field: percolation, bound: at most, limit: percolation_slowest}
#   remedy: >-
#     Look for better ground, or ask the health department what it wants here: the rate drawn is {percolation}.
#   caution: pathogens
#   sources:
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: G-8
#       standing: published
package greysill.dispersal.percolation

import rego.v2

proved contains s.subject if {
	some s in input.soil
	s.percolation >= data.limits.percolation_fastest.value
	s.percolation <= data.limits.percolation_slowest.value
}
