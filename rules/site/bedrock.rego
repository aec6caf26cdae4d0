# METADATA
# title: Enough soil lies between where greywater soaks in and rock or tight soil.
# description: >-
#   Rock and clay pan hold the water up, so that it comes out downhill; cracks in rock carry it to wells with nothing
#   cleaned. The soil above is all the treatment that there is.
# custom:
#   subjects: soakage
#   level: fail
#   measures:
#     - {field: above_bedrock, bound: at least, limit: bottom_above_bedrock}
#   remedy: >-
#     Raise the bottom of {subject} by at least {short}, or move it to deeper soil: as drawn, its bottom is
#     {bottom_depth} below the ground.
#   caution: pathogens
#   sources:
#     - title: Administrative Rules of South Dakota 74:53:01:15
#       standing: published
#     - title: Administrative Rules of Montana 17.36.319
#       place: (4)(d), natural soil to a limiting layer
#       standing: published
#     - title: Idaho Administrative Code 58.01.03.008
#       place: effective soil to an impermeable layer
#       standing: published
package greysill.site.bedrock

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.above_bedrock >= data.limits.bottom_above_bedrock.value
}
