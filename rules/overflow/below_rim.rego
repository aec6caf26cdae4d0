# METADATA
# title: Every spillway and overflow pipe begins below the rim of what it serves.
# description: >-
#   Water leaves by the lowest way. Where that is the rim, it runs down the outside of the bank, through the yard
#   or into the house, and the overflow stays dry.
# custom:
#   subjects: spillways
#   level: fail
#   measures:
#     - {field: below_rim}
#     - {field: head}
#   remedy: >-
#     Set {subject} lower, or raise the rim of {serves}: as drawn, the height of the rim over the place where
#     water begins to leave is {head}.
#   caution: pathogens
#   sources:
#     - title: The rim of whatever holds water stands above its overflow
#       standing: common practice
package greysill.overflow.below_rim

import rego.v2

proved contains w.subject if {
	some w in input.spillways
	w.below_rim == true
}
