# METADATA
# title: The plan lists the buried services, or says that there are none.
# description: >-
#   A plan without lines looks like a plan of ground without lines.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: shows_services}
#   remedy: >-
#     Draw every buried line under services; where there is none, write services as an empty list.
#   sources:
#     - title: Code of Federal Regulations, title 29, section 1926.651, as a training page restates it
#       place: (b), lines found before opening the ground
#       standing: published
package greysill.records.services_shown

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.shows_services == true
}
