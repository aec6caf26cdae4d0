# METADATA
# title: Every buried service has been found on the ground and marked.
# description: >-
#   A line taken from old records or from memory may lie several feet from where it is drawn. Whoever digs finds it with
#   the shovel.
# custom:
#   subjects: services
#   level: fail
#   measures:
#     - {field: located}
#     - {field: private}
#   remedy: >-
#     Have {subject} found and marked on the ground, draw it where it is, and set located to true. The one-call centre (in
#     the United States 811) has the utilities' lines marked; for a line of your own hire a private locator, since that
#     call does not cover it.
#   caution: digging
#   sources:
#     - title: Revised Code of Washington 19.122.030, notice before digging
#       standing: published
#     - title: Code of Federal Regulations, title 29, section 1926.651, as a training page restates it
#       place: (b), lines found before opening the ground
#       standing: published
#     - title: Private lines are not marked by the one-call centre
#       standing: from memory
package greysill.services.located

import rego.v2

proved contains s.subject if {
	some s in input.services
	s.located == true
}
