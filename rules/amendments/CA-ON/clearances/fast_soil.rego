# METADATA
# title: The soil is slow enough for the table's distances from wells and open water.
# description: >-
#   In fast soil greywater is at the well before the soil has cleaned it. Below this rate Ontario's distances from
#   wells, springs, lakes and streams have to be greater than the table says, by as much as the authority asks.
# custom:
#   subjects: soil
#   level: warn
#   measures:
#     - {field: percolation, bound: at least, limit: ontario_fast_soil}
#   remedy: >-
#     Ask the authority by how much the distances from wells and open water have to grow: the rate drawn is
#     {percolation}, and the table holds from {limit} on.
#   caution: pathogens
#   sources:
#     - title: Ontario Building Code, Part 8, in an online copy whose edition was not noted
#       place: 8.2.1.4(2)
#       standing: published
package greysill.clearances.fast_soil

import rego.v2

proved contains s.subject if {
	some s in input.soil
	s.percolation >= data.limits.ontario_fast_soil.value
}
