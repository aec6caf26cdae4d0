# METADATA
# title: Water passes through most of a planted gravel bed from its inlet header to its outlet.
# description: >-
#   Water takes the short way. Gravel behind the header or beyond the outlet stands still and cleans nothing, though its
#   area and pores are counted.
# custom:
#   subjects: bed_flow
#   level: warn
#   measures:
#     - {field: course_share, bound: at least, limit: course_share}
#     - {field: length}
#   remedy: >-
#     Draw the inlet header of {subject} at one end and the outlet at the other: as drawn, {length} lie between them,
#     {course_share} of the bed, where {limit} is wanted.
#   sources:
#     - title: Water comes in at one end of a bed and goes out at the other
#       standing: common practice
package greysill.bed.inlet_to_outlet

import rego.v2

proved contains b.subject if {
	some b in input.bed_flow
	b.course_share >= data.limits.course_share.value
}
