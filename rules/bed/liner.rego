# METADATA
# title: The liner of a planted gravel bed is thick enough.
# description: >-
#   Without a liner untreated greywater seeps out before the gravel has cleaned it, and in wet months groundwater
#   comes in. A thin sheet is pierced by the first stones that are tipped on it. The limit is that of PVC; polyethylene
#   wants more.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: liner_thickness, bound: at least, limit: liner_thickness}
#     - {field: liner_material}
#   remedy: >-
#     Take a liner at least {limit} thick for {subject}, between two layers of fleece or sand. As drawn, it is
#     {liner_thickness} of {liner_material}.
#   sources:
#     - title: USDA NRCS Conservation Practice Standard 521A, pond sealing or lining, flexible membrane
#       place: Table 1, PVC for wastewater
#       standing: published
#     - title: Arizona Administrative Code R18-9-E318
#       place: a lined excavation
#       standing: published
#     - title: Michigan Administrative Code R 323.2216
#       place: composite liner
#       standing: published
#     - title: U.S. EPA 832-R-93-008 (1993), subsurface flow wetlands
#       standing: from memory
package greysill.bed.liner

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.liner_thickness >= data.limits.liner_thickness.value
}
