# METADATA
# title: The plan says where north is and what its levels hang on.
# description: >-
#   Levels that hang on nothing cannot be set out on the ground again, and a plan without north is built mirrored.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: datum}
#     - {field: shows_north}
#   remedy: >-
#     Name a mark that will not move, such as a door sill, as datum, and give north.
#   sources:
#     - title: Levels hang on a lasting mark
#       standing: common practice
package greysill.records.datum

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.datum != ""
	p.shows_north == true
}
