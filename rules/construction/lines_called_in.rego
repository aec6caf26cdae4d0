# METADATA
# title: The plan has buried lines called in before the first dig.
# description: >-
#   A spade finds a line that nobody called in, and a struck gas or power line kills. In most places the call is the law.
#   It does not cover the owner's own lines.
# custom:
#   subjects: construction
#   level: fail
#   measures:
#     - {field: lines_called_in}
#   remedy: >-
#     Write on the plan that the one-call centre (in the United States 811) is called some days before the first dig and
#     that private lines are looked for too, and set lines_called_in to true.
#   caution: digging
#   sources:
#     - title: Revised Code of Washington 19.122.030, notice before digging
#       standing: published
#     - title: Code of Federal Regulations, title 29, section 1926.651, as a training page restates it
#       place: (b), lines found before opening the ground
#       standing: published
package greysill.construction.lines_called_in

import rego.v2

proved contains c.subject if {
	some c in input.construction
	c.lines_called_in == true
}
