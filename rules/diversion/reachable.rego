# METADATA
# title: Every diverter can be reached and turned at once.
# description: >-
#   It is needed on the night when somebody falls ill or the ground freezes. A valve behind boards, or one that wants a
#   wrench, is not turned in time, if at all.
# custom:
#   subjects: diverters
#   level: fail
#   measures:
#     - {field: accessible}
#   remedy: >-
#     Set {subject} where a hand reaches its handle without digging, unscrewing or moving anything, or fit a hatch over
#     it.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(n), readily accessible
#       standing: published
#     - title: Digest of the California Plumbing Code's sections on greywater, by section number
#       place: California Plumbing Code 1602.2.3
#       standing: published
package greysill.diversion.reachable

import rego.v2

proved contains d.subject if {
	some d in input.diverters
	d.accessible == true
}
