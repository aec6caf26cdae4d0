# METADATA
# title: The soil has been tested beside and below where water is let into it.
# description: >-
#   Soil changes within a few steps. A basin sized by the county's soil map, or by a hole at the other end of the garden,
#   stands full on a seam of clay.
# custom:
#   subjects: soakage
#   level: warn
#   measures:
#     - {field: soil_test_distance, bound: at most, limit: soil_test_distance}
#   remedy: >-
#     Have a hole or pit dug within {limit} of {subject}, 2 ft deeper than its bottom, and draw it with its place, date
#     and depth. Fill it or fence it the same day.
#   caution: digging
#   sources:
#     - title: Administrative Rules of Montana 17.36.319
#       place: (5), soil described within 25 ft
#       standing: published
#     - title: Utah Administrative Code R317-401-4 (2024)
#       place: 4.2(a), a hole to 2 ft below the zone
#       standing: published
package greysill.records.soil_tested

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.soil_test_distance <= data.limits.soil_test_distance.value
}
