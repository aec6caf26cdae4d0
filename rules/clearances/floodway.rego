# METADATA
# title: No part of the system lies in a floodway.
# description: >-
#   A flood takes up everything that stands in its way: lids, mulch, gravel and the greywater in them, and carries them
#   to the next house downstream.
# custom:
#   subjects: clearances.floodway
#   level: fail
#   measures:
#     - {field: touches}
#     - {field: distance}
#   remedy: >-
#     Move {part} out of {feature}, or ask the floodplain office for its line and correct the drawing.
#   caution: pathogens
#   sources:
#     - title: New Mexico Administrative Code 20.7.3.810
#       place: C
#       standing: published
#     - title: Arizona Administrative Code R18-9-711 (2001), as copied in full
#       place: Type 1, outside the floodway
#       standing: published
#     - title: Official Code of Georgia Annotated 31-3-5.2
#       place: outside the floodway
#       standing: published
package greysill.clearances.floodway

import rego.v2

proved contains c.subject if {
	some c in input.clearances.floodway
	c.touches == false
}
