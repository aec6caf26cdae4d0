# METADATA
# title: Insect screen closes every opening of a covered tank, filter or basin.
# description: >-
#   Mosquitoes find a vent or an overflow pipe and breed in the dark water under the lid, where nobody sees them; some
#   carry disease.
# custom:
#   subjects: open_water
#   level: warn
#   measures:
#     - {field: screened}
#     - {field: kind}
#   remedy: >-
#     Draw insect screen over the vent and the overflow of {subject}, and a lid that closes tightly.
#   sources:
#     - title: Texas Health and Safety Code 341.039
#       place: (c)(4)
#       standing: published
#     - title: New Mexico Administrative Code 20.7.3.810, as copied by an agency in 2009
#       place: covered tank
#       standing: published
#     - title: Openings of a water tank are closed by insect screen
#       standing: common practice
package greysill.exposure.mosquitoes

import rego.v2

proved contains w.subject if {
	some w in input.open_water
	w.lies_open == false
	w.screened == true
}

excused contains {"subject": w.subject, "reason": "it lies open, which exposure/open_water_ahead and open_water_permit judge"} if {
	some w in input.open_water
	w.lies_open == true
}
