# METADATA
# title: The plan shows the house.
# description: >-
#   Every distance to a footing, and every way from a fixture, begins at it. No reviewer can accept a plan without
#   it.
# custom:
#   subjects: plan
#   level: fail
#   measures:
#     - {field: shows_house}
#   remedy: >-
#     Draw every building on the site and beside it by its outline, as a feature of the kind building.
#   caution: digging
#   sources:
#     - title: A plot plan shows the house and what is buried round it
#       standing: common practice
package greysill.records.house_shown

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.shows_house == true
}
