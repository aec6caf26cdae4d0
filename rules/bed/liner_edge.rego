# METADATA
# title: The liner of a planted gravel bed reaches far enough beyond the edge to be anchored.
# description: >-
#   A liner that ends at the edge slips down under the weight of the gravel. Then water leaves over it, and surface
#   water comes in behind it.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: liner_overlap, bound: at least, limit: liner_overlap}
#   remedy: >-
#     Draw the liner of {subject} {short} wider on every side: up to the rim, over it, and down into a small trench all
#     round.
#   caution: digging
#   sources:
#     - title: USDA NRCS in Arizona, specification 521A (2008), flexible membrane
#       place: anchor trench 12 in deep and 12 in wide
#       standing: published
package greysill.bed.liner_edge

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.liner_overlap >= data.limits.liner_overlap.value
}
