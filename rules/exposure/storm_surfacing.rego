# METADATA
# title: The water in a planted gravel bed stays below the gravel in the design storm.
# description: >-
#   In a storm a bed takes the rain on it, and whatever drains to it, besides the greywater. Water that comes up then
#   carries greywater over the yard. The storm is the one drawn, and the overflow is taken to run freely.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: storm_rise_share, bound: at most, limit: storm_rise_share}
#     - {field: water_below_surface}
#   remedy: >-
#     Lower the overflow of {subject} or make it wider, keep roof and surface water away from the bed, or lower its
#     outlet. As drawn, {water_below_surface} of dry gravel lie over the water, and the storm takes up
#     {storm_rise_share} of them.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(g)
#       standing: published
#     - title: Utah Administrative Code R317-401-3 (2024)
#       place: 3.2(a)
#       standing: published
package greysill.exposure.storm_surfacing

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.storm_rise_share <= data.limits.storm_rise_share.value
}
