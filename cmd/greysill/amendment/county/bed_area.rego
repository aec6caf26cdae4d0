# METADATA
# title: A planted gravel bed is as large as the county asks for.
# description: >-
#   Say here, in the words of an installer, what goes wrong otherwise.
# custom:
#   subjects: beds
#   level: fail
#   measures:
#     - {field: area, bound: at least, limit: county_bed_area}
#   remedy: >-
#     Enlarge {subject} by {short}.
#   sources:
#     - title: The ordinance that was read, with its year
#       place: section
#       standing: from memory
package greysill.county.bed_area

import rego.v2

# Every item of the list beds is a subject. This proves those that are large
# enough; whatever is not proved is a finding, also a bed whose area the drawing
# does not show.
proved contains b.subject if {
	some b in input.beds
	b.area >= data.limits.county_bed_area.value
}
