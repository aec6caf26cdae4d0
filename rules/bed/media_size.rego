# METADATA
# title: The stones are of a size that lets the water through and roots in.
# description: >-
#   Between small stones the bed clogs soon. Between large ones roots find no hold, the water runs through without
#   being cleaned, and a dry layer for planting dries out. It is a warning because the texts give different ranges.
# custom:
#   subjects: layers
#   level: warn
#   measures:
#     - {field: size, bound: at least, limit: media_size_least, where: {lies: under water}}
#     - {field: size, bound: at most, limit: media_size_greatest, where: {lies: under water}}
#     - {field: size, bound: at least, limit: planting_media_size_least, where: {lies: above the water}}
#     - {field: size, bound: at most, limit: planting_media_size_greatest, where: {lies: above the water}}
#   remedy: >-
#     Take washed stones of another size for {subject}, which lies {lies}: as drawn they measure {size}, off by
#     {short}.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(vii)
#       standing: published
#     - title: U.S. EPA 832-F-00-023 (2000), fact sheet on subsurface flow wetlands
#       place: figure 1
#       standing: published
#     - title: U.S. EPA, EPA/625/R-99/010 (2000), manual on constructed wetlands
#       place: chapter 5
#       standing: from memory
package greysill.bed.media_size

import rego.v2

proved contains l.subject if {
	some l in input.layers
	l.lies == "under water"
	l.size >= data.limits.media_size_least.value
	l.size <= data.limits.media_size_greatest.value
}

proved contains l.subject if {
	some l in input.layers
	l.lies == "above the water"
	l.size >= data.limits.planting_media_size_least.value
	l.size <= data.limits.planting_media_size_greatest.value
}
