# METADATA
# title: A planted gravel bed is no smaller than the county asks for.
# description: >-
#   A small bed clogs within a few seasons, and nobody digs it out. The county has seen enough of them.
# custom:
#   subjects: beds
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: area, bound: at least, limit: tarn_bed_area}
#   remedy: >-
#     Enlarge {subject} by {short}; as drawn it has {area}.
#   sources:
#     - title: Tarn County Greywater Ordinance (2024)
#       place: s. 13
#       standing: published
package greysill.beds.area

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.area >= data.limits.tarn_bed_area.value
}
