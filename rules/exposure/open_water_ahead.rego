# METADATA
# title: No water from the house lies open before it has passed through a planted gravel bed.
# description: >-
#   Untreated greywater in the open turns foul within a day, breeds mosquitoes, and lies where a child can reach it. No
#   greywater code that was read for this rule book allows it. A plan that does not say whether a tank, filter or
#   settling basin is covered cannot be accepted.
# custom:
#   subjects: open_water
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: lies_open}
#     - {field: treated_first}
#     - {field: untreated_sources}
#   remedy: >-
#     Cover {subject}, leave it out, or lead the water of its untreated sources ({untreated_sources}) through a planted
#     gravel bed before it.
#   caution: open_water
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(g)
#       standing: published
#     - title: Utah Administrative Code R317-401-3 (2024)
#       place: 3.2(a)
#       standing: published
#     - title: Wisconsin Administrative Code SPS 383.32
#       place: (1)(e)
#       standing: published
package greysill.exposure.open_water_ahead

import rego.v2

proved contains w.subject if {
	some w in input.open_water
	w.treated_first == true
}

proved contains w.subject if {
	some w in input.open_water
	w.lies_open == false
}
