# METADATA
# title: What is dug out is kept back from the edge of the cut.
# description: >-
#   A heap at the edge presses the wall in and rolls back onto whoever works below.
# custom:
#   subjects: construction
#   level: warn
#   measures:
#     - {field: spoil_distance, bound: at least, limit: spoil_distance}
#   remedy: >-
#     Keep what is dug out, and machines, {limit} or more from the edge of every cut, and write it on the plan.
#   caution: digging
#   sources:
#     - title: Code of Federal Regulations, title 29, section 1926.651, as a training page restates it
#       place: (j)(2)
#       standing: published
package greysill.construction.spoil

import rego.v2

proved contains c.subject if {
	some c in input.construction
	c.spoil_distance >= data.limits.spoil_distance.value
}
