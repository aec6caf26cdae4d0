# METADATA
# title: A house with a septic tank stays within what one individual wastewater system may take.
# description: >-
#   Hawaii bounds the flow and the bedrooms of an individual wastewater system. Beyond that the house needs another system
#   or a sewer, whatever goes to the garden.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: hawaii_system_flow}
#     - {field: bedrooms, bound: at most, limit: hawaii_system_bedrooms}
#   remedy: >-
#     Ask the Department of Health what it wants of a house of {bedrooms} bedrooms with {daily_flow} of greywater.
#   caution: septic_tank
#   sources:
#     - title: Hawaii Administrative Rules 11-62-31.1, individual wastewater systems
#       standing: published
package greysill.flow.individual_system

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.sewage == "septic tank"
	s.daily_flow <= data.limits.hawaii_system_flow.value
	s.bedrooms <= data.limits.hawaii_system_bedrooms.value
}

excused contains {"subject": s.subject, "reason": "the house is on a sewer"} if {
	some s in input.system
	s.sewage == "sewer"
}
