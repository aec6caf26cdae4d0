# METADATA
# title: The drawing says what keeps each spillway from washing out.
# description: >-
#   Bare earth washes at the speed of a slow walk. A spillway that is not lined cuts itself deeper in the first
#   real storm, and the whole pond goes out through it.
# custom:
#   subjects: spillway_channels
#   level: warn
#   measures:
#     - {field: lining_stated}
#   remedy: >-
#     Say what {subject} is lined with: turf that has grown in, or stone over filter cloth, down to where the
#     water comes to rest.
#   caution: digging
#   sources:
#     - title: USDA SCS-TP-61, allowable velocities on grass, as the code of Winchester, Indiana tabulates them
#       standing: published
#     - title: Minnesota Stormwater Manual
#       place: greatest velocity on bare soil, 1.5 to 2.5 ft/s
#       standing: published
package greysill.overflow.spillway_lining

import rego.v2

proved contains c.subject if {
	some c in input.spillway_channels
	c.lining_stated == true
}
