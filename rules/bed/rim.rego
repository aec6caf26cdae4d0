# METADATA
# title: The rim of a planted gravel bed stands no lower than its gravel.
# description: >-
#   The rim keeps the gravel, the mulch and the liner in, and runoff from uphill out. Gravel heaped above it carries
#   water out over the liner.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: rim_above_surface}
#     - {field: freeboard}
#   remedy: >-
#     Raise the rim of {subject} above the gravel on every side, or rake the gravel down below it. As drawn, the rim
#     stands {freeboard} above the water.
#   sources:
#     - title: The rim of a lined bed stands above its media
#       standing: common practice
package greysill.bed.rim

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.rim_above_surface == true
}
