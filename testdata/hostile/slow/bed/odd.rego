# METADATA
# title: Every bed is as it should be.
# description: >-
#   So that something is said.
# custom:
#   subjects: parts
#   level: warn
#   measures:
#     - {field: area}
#   remedy: >-
#     Mend {subject}.
#   sources:
#     - title: Nothing
#       standing: common practice
package greysill.bed.odd

import rego.v2

proved contains a.subject if {
	some a in input.parts
	some p0 in input.parts
	some p1 in input.parts
	some p2 in input.parts
	some p3 in input.parts
	some p4 in input.parts
	some p5 in input.parts
	some p6 in input.parts
	some p7 in input.parts
	some p8 in input.parts
	some p9 in input.parts
	some p10 in input.parts
	some p11 in input.parts
	some p12 in input.parts
	some p13 in input.parts
	some p14 in input.parts
	some p15 in input.parts
	some p16 in input.parts
	some p17 in input.parts
	some p18 in input.parts
	some p19 in input.parts
	a.area + p0.area + p19.area < -1
}

proved contains a.subject if {
	some a in input.parts
	a.kind != "pond"
	a.drains_on == true
}
