# METADATA
# title: Sewage cannot come back from the sewer into the greywater system.
# description: >-
#   When a sewer is blocked or a septic field is soaked, sewage stands up in the pipe. Unless a backwater valve or an
#   air gap stops it, it runs back through the bypass or the overflow and comes up in the tank, the bed or the house.
# custom:
#   subjects: sewer_ways
#   level: fail
#   measures:
#     - {field: backwater}
#     - {field: above_surcharge, bound: at least, limit: above_surcharge, where: {backwater: none}}
#   remedy: >-
#     Put a backwater valve that can be reached, or an air gap, between {part} and {connection}; or show that
#     {connection} never backs up as high as the {upper_level} at which water leaves {part}.
#   caution: sewer_connection
#   sources:
#     - title: Texas Administrative Code, title 30, section 210.83
#       place: (d)(1), one air gap or two backwater valves
#       standing: published
#     - title: Digest of the California Plumbing Code's sections on greywater, by section number
#       place: California Plumbing Code 1602.2.4, where sewage can come back
#       standing: published
package greysill.diversion.backwater_valve

import rego.v2

proved contains w.subject if {
	some w in input.sewer_ways
	w.backwater == "valve or air gap"
}

proved contains w.subject if {
	some w in input.sewer_ways
	w.above_surcharge >= data.limits.above_surcharge.value
}
