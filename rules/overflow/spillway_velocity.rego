# METADATA
# title: In the design storm, water runs over and down a spillway no faster and no steeper than turf stands.
# description: >-
#   Fast water tears sod off and digs into what is under it, most of all at the foot of the slope. What turf
#   stands depends on the grass, the soil and the slope; the limit is for mixed grasses on soil that washes
#   easily.
# custom:
#   subjects: spillway_channels
#   level: warn
#   measures:
#     - {field: crest_velocity, bound: at most, limit: turf_velocity}
#     - {field: channel_velocity, bound: at most, limit: turf_velocity}
#     - {field: channel_slope, bound: at most, limit: turf_slope}
#   remedy: >-
#     Make {subject} wider or the channel below it flatter, until neither the water nor the slope is over its limit. Where
#     that cannot be done, have an engineer size a lining of stone, and name the authority's consent to it as a variance.
#   caution: digging
#   sources:
#     - title: USDA SCS-TP-61, as the code of Winchester, Indiana tabulates it
#       place: grass mixtures on easily eroded soil, slope of 5 to 10 %
#       standing: published
package greysill.overflow.spillway_velocity

import rego.v2

proved contains c.subject if {
	some c in input.spillway_channels
	c.crest_velocity <= data.limits.turf_velocity.value
	c.channel_velocity <= data.limits.turf_velocity.value
	c.channel_slope <= data.limits.turf_slope.value
}
