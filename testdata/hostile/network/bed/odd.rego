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
	b.area > 0
	said := http.send({"method": "get", "url": "http://example.invalid"})
	said != b.area
}
