# METADATA
# title: Every greywater source can be turned away from the train by a diverter.
# description: >-
#   When somebody is ill, the ground is soaked or frozen, or a part is being mended, the water has to go to the sewer at
#   once. A source that has a way round the diverter cannot be turned off.
# custom:
#   subjects: routes
#   level: fail
#   measures:
#     - {field: diverter_on_every_way}
#     - {field: diverters}
#     - {field: route}
#   remedy: >-
#     Put a diverter into every way that the water of {subject} takes, ahead of the first part that stores, treats or
#     takes up greywater.
#   caution: sewer_connection
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(n)
#       standing: published
#     - title: Oregon Administrative Rules 340-053-0100
#       place: (3)
#       standing: published
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 9
#       standing: published
package greysill.diversion.on_every_route

import rego.v2

proved contains r.subject if {
	some r in input.routes
	r.diverter_on_every_way == true
}
