# METADATA
# title: All water passes a settling basin, a tank or a filter before it reaches a planted gravel bed.
# description: >-
#   Hair, lint, sand and grease close the first inches of the gravel. A settling basin, tank or filter ahead of the
#   bed holds them back where they can be taken out; a surge tank does so only with a basket or screen at its inlet.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: settled_first}
#     - {field: unsettled_sources}
#   remedy: >-
#     Lead the water of {unsettled_sources} through a settling basin, a tank or a filter before it comes to {subject},
#     and say in the operation who cleans it and how often.
#   caution: pathogens
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(i), septic tanks ahead of the bed
#       standing: published
#     - title: Iowa Administrative Code 567-69.8
#       place: septic tank
#       standing: published
package greysill.bed.settled_first

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.settled_first == true
}
