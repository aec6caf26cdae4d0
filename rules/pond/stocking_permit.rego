# METADATA
# title: Fish are kept in a pond only with leave of the fish and wildlife authority.
# description: >-
#   Fish get out, over a spillway or in a flood. Goldfish and mosquitofish eat the eggs of frogs and of native
#   fish and are never got rid of again. Some states bar them, some want a permit for any fish, and some hand out
#   mosquitofish themselves. Only the authority says which.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: fish}
#     - {field: has_stocking_permit}
#   remedy: >-
#     Ask the state's fish and wildlife authority before {fish} goes into {subject}, and name its leave on the
#     drawing; or leave the fish out.
#   caution: open_water
#   sources:
#     - title: California Fish and Game Code
#       place: sections 15200 to 15202
#       standing: published
#     - title: Washington Department of Fish and Wildlife, release of 20 March 2003, as quoted on a page
#       standing: published
#     - title: California Department of Public Health, Best Management Practices for Mosquito Control (2010)
#       place: mosquitofish from a local programme
#       standing: published
package greysill.pond.stocking_permit

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.stocked == true
	b.has_stocking_permit == true
}

excused contains {"subject": b.subject, "reason": "no fish are drawn in it"} if {
	some b in input.ponds
	b.stocked == false
}
