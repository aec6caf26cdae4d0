# METADATA
# title: The gravel of a planted gravel bed is deep enough everywhere, and nowhere too deep.
# description: >-
#   Where the gravel is thin, water comes to the surface and freezes first. Where it is deeper than roots reach, water
#   takes the easy way underneath them and is cleaned less. On uneven ground both can happen in one bed. No reviewer can
#   accept a bed whose depth is not drawn.
# custom:
#   subjects: beds
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: least_depth, bound: at least, limit: media_depth_least}
#     - {field: greatest_depth, bound: at most, limit: media_depth_greatest}
#   remedy: >-
#     Change the floor or the gravel's surface of {subject} by {short} where the depth is wrong. As drawn, the least
#     depth is {least_depth} ({least_depth_at}), the greatest {greatest_depth} ({greatest_depth_at}).
#   caution: digging
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(viii)
#       standing: published
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       place: range of media depths in use
#       standing: published
package greysill.bed.media_depth

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.least_depth >= data.limits.media_depth_least.value
	b.greatest_depth <= data.limits.media_depth_greatest.value
}
