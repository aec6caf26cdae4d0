# METADATA
# title: The plan shows the water service of the house.
# description: >-
#   Greywater has to stay clear of it, and nobody can measure to a pipe that is not drawn. A house without a water pipe in
#   the ground is rare.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: shows_water_service}
#   remedy: >-
#     Find the water pipe from the main or the well to the house, and draw it as a service of the kind water or as a
#     feature of the kind water service. Where there is none, name that as a variance.
#   caution: drinking_water
#   sources:
#     - title: A plot plan shows the house and what is buried round it
#       standing: common practice
package greysill.records.water_service_shown

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.shows_water_service == true
}
