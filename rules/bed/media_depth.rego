# METADATA
# title: A planted gravel bed has enough media everywhere, and nowhere too much.
# description: >-
#   Where the gravel is thin, water comes to the surface and freezes first. Where it is deeper than roots reach, water
#   takes the easy way underneath them and is cleaned less. On uneven ground both can happen in one bed.
# custom:
#   subjects: beds
#   level: fail
#   measures:
#     - {field: depth_least, bound: at least, limit: media_depth_least}
#     - {field: depth_greatest, bound: at most, limit: media_depth_greatest}
#   remedy: >-
#     Change the floor or the gravel's surface of {subject} by {short} where the depth is wrong. It is {depth_least} at
#     the least, {depth_least_at}, and {depth_greatest} at the most, {depth_greatest_at}.
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
	b.depth_least >= data.limits.media_depth_least.value
	b.depth_greatest <= data.limits.media_depth_greatest.value
}
