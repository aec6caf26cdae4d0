# METADATA
# title: A planted gravel bed is large enough for the water that comes to it.
# description: >-
#   The area is what planners size a bed by first. The sources lie four times apart, and most are for sewage; this one
#   is the loosest that was read in its text.
# custom:
#   subjects: bed_flow
#   level: warn
#   measures:
#     - {field: hydraulic_loading, bound: at most, limit: hydraulic_load_greatest}
#     - {field: flow}
#   remedy: >-
#     Make {subject} larger, or lead less water to it: {flow} come to {area}, which is {hydraulic_loading}, where at
#     most {limit} is wanted.
#   sources:
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       place: chapter 2, 18.5 m² for each m³ a day
#       standing: published
#     - title: Iowa Administrative Code 567-69.15 (2024)
#       place: 300 ft² for each bedroom, of sewage
#       standing: published
#     - title: GIZ, Technology review of constructed wetlands (2011)
#       place: horizontal flow beds, greywater
#       standing: from memory
package greysill.treatment.hydraulic_load

import rego.v2

proved contains b.subject if {
	some b in input.bed_flow
	b.hydraulic_loading <= data.limits.hydraulic_load_greatest.value
}
