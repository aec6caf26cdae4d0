# METADATA
# title: Every part lies on one's own land.
# description: >-
#   What lies beyond the boundary can be dug up by its owner at any time, and greywater that leaves the land is a
#   discharge onto somebody else's.
# custom:
#   subjects: parts
#   level: fail
#   measures:
#     - {field: beyond_boundary}
#   remedy: >-
#     Move {subject} inside the boundary: as drawn, it reaches {beyond_boundary} beyond it. If the boundary is drawn
#     wrongly, correct it from the survey.
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (a)(i)(A)
#       standing: published
#     - title: Colorado Regulation 86, 5 CCR 1002-86 (2024)
#       place: 86.14(B)(2)
#       standing: published
package greysill.site.own_land

import rego.v2

proved contains p.subject if {
	some p in input.parts
	p.inside_boundary == true
}

excused contains {
	"subject": p.subject,
	"reason": "a connection to the public sewer may lie beyond the boundary",
} if {
	some p in input.parts
	p.kind == "sewer connection"
	p.inside_boundary == false
}
