# METADATA
# title: Wells round the site have been looked for.
# description: >-
#   The nearest well may stand behind the neighbour's hedge, and it is the neighbour who drinks from it.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: wells_shown_within, bound: at least, limit: wells_shown_within}
#   remedy: >-
#     Look for wells and springs within {limit} of the site, ask the neighbours and the state's register, draw what is
#     there, and say under looked_for_within how far you looked.
#   sources:
#     - title: New Mexico Administrative Code 20.7.3.402
#       place: A
#       standing: published
package greysill.records.wells_shown

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.wells_shown_within >= data.limits.wells_shown_within.value
}
