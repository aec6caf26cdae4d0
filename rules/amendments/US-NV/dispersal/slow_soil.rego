# METADATA
# title: The soil is not too slow for a permit.
# description: >-
#   Nevada permits no greywater system in soil that lets water through more slowly than this. It stands in the trench until
#   it comes up.
# custom:
#   subjects: soil
#   level: fail
#   measures:
#     - {field: percolation, bound: at most, limit: nevada_percolation_slowest}
#   remedy: >-
#     Look for a place on the land where a percolation test comes out faster; the test drawn is {short} too slow.
#   caution: pathogens
#   sources:
#     - title: Nevada Administrative Code 444.837
#       place: (2)(b)
#       standing: published
package greysill.dispersal.slow_soil

import rego.v2

proved contains s.subject if {
	some s in input.soil
	s.percolation <= data.limits.nevada_percolation_slowest.value
}
