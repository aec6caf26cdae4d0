# METADATA
# title: Every bed is as it should be.
# description: >-
#   So that something is said.
# custom:
#   subjects: beds
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

proved contains b.subject if {
	some b in input.beds
	b.area > 1000000
}

excused contains {"subject": b.subject, "reason": $"{x.subject}{y.subject}{z.subject}"} if {
	some b in input.beds
	some x in input.parts
	some y in input.parts
	some z in input.parts
}
