# METADATA
# title: Pipes that lead greywater to the garden are marked as not fit to drink.
# description: >-
#   Years later somebody cuts into a pipe in the garden to fit a tap. Only the marking tells it from a water pipe.
# custom:
#   subjects: pipes
#   level: warn
#   measures:
#     - {field: marked}
#   remedy: >-
#     Mark {subject} along its length, in the colour and words that the local code asks, as carrying greywater that is not
#     fit to drink.
#   caution: drinking_water
#   sources:
#     - title: New Mexico Administrative Code 20.7.3.810
#       place: E, pressure pipes marked as not potable
#       standing: published
#     - title: Uniform Plumbing Code
#       place: sections 601.3 and 1501, all pipes of gray water
#       standing: from memory
package greysill.drains.marked

import rego.v2

proved contains p.subject if {
	some p in input.pipes
	p.leads_to_train == true
	p.marked == true
}

excused contains {"subject": p.subject, "reason": "it leads to the sewer like any drain of the house"} if {
	some p in input.pipes
	p.leads_to_train == false
}
