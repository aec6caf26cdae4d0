# METADATA
# title: The soil has been tested where water is let into it.
# description: >-
#   Soil changes within a few steps. A basin sized by the county's soil map stands full on a seam of clay.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: soil_tests, bound: at least, limit: soil_tests}
#   remedy: >-
#     Have a hole or pit dug where the water is to soak in, below the depth that it is let in at, and draw it with its
#     date and depth. Fill it or fence it the same day.
#   caution: digging
#   sources:
#     - title: Utah Administrative Code R317-401-4 (2024)
#       place: 4.2(a), a hole to 2 ft below the zone
#       standing: published
package greysill.records.soil_tested

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.soaks_away == true
	p.soil_tests >= data.limits.soil_tests.value
}

excused contains {"subject": p.subject, "reason": "nothing is let into the soil"} if {
	some p in input.plan
	p.soaks_away == false
}
