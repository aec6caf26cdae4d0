# METADATA
# title: A liner lies on something soft.
# description: >-
#   The weight of gravel and water presses a liner onto every stone under it. The hole is found when the bed runs dry, and
#   everything has to come out again.
# custom:
#   subjects: quantities.liner
#   level: warn
#   measures:
#     - {field: bedded}
#   remedy: >-
#     Roll the ground under the liner of {subject} smooth, take out stones and roots, lay sand, fine soil or felt, and set
#     bedded to true.
#   sources:
#     - title: Natural Resources Conservation Service, Arizona, practice specification 521A (2008)
#       place: subgrade rolled smooth, or a cushion of fine soil
#       standing: published
package greysill.construction.liner_bedding

import rego.v2

proved contains l.subject if {
	some l in input.quantities.liner
	l.bedded == true
}
