# METADATA
# title: Water in the open round the site has been looked for.
# description: >-
#   A ditch that is dry in summer leads to the stream in winter, and distances count from it.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: surface_water_shown_within, bound: at least, limit: surface_water_shown_within}
#   remedy: >-
#     Look for streams, ditches, ponds and lagoons within {limit} of the site, draw what is there, and say under
#     looked_for_within how far you looked.
#   sources:
#     - title: Nevada Administrative Code 444.784
#       place: (3)(e)
#       standing: published
package greysill.records.surface_water_shown

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.surface_water_shown_within >= data.limits.surface_water_shown_within.value
}
