# METADATA
# title: Bare soil is held back until it is grown over.
# description: >-
#   One storm on a slope that has just been dug washes the soil into the new gravel, which it clogs for good, and into
#   the neighbour's drain.
# custom:
#   subjects: construction
#   level: warn
#   measures:
#     - {field: bare_soil_held}
#   remedy: >-
#     Plan the digging for dry weeks, cover bare soil or fence it off below, keep runoff out of open beds and trenches,
#     and set bare_soil_held to true.
#   sources:
#     - title: Soil that is dug up is held back from running water
#       standing: common practice
package greysill.construction.bare_soil

import rego.v2

proved contains c.subject if {
	some c in input.construction
	c.bare_soil_held == true
}
