# METADATA
# title: The rim of a planted gravel bed stands well above the water.
# description: >-
#   A storm, a clogged outlet or a drained bath raises the water. The height up to the rim takes that up before
#   greywater runs out over the edge.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: freeboard, bound: at least, limit: bed_freeboard}
#   remedy: >-
#     Raise the rim of {subject} by {short}, or lower its water level by as much.
#   caution: pathogens
#   sources:
#     - title: GIZ, Technology review of constructed wetlands (2011)
#       place: horizontal flow beds
#       standing: from memory
package greysill.bed.freeboard

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.freeboard >= data.limits.bed_freeboard.value
}
