# METADATA
# title: No chemicals that poison soil or water go down a drain of the greywater train.
# description: >-
#   Photographic baths, oil from car parts and rags, solvents and paint kill what cleans the water in gravel and soil,
#   and then go on to the groundwater. No bed takes them out.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: hazardous_chemicals}
#     - {field: enters_train}
#     - {field: route}
#   remedy: >-
#     Keep such chemicals out of {subject} and take them to the hazardous waste collection, or lead {subject} straight
#     to the sewer and ask the sewer's operator what it may take.
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(d) to (f)
#       standing: published
#     - title: Plumas County, California, summary of the plumbing code's rules for clothes washer systems
#       place: California Plumbing Code 1602.1.1
#       standing: published
package greysill.sources.hazardous_chemicals

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water == "greywater"
	i.hazardous_chemicals == false
}

proved contains i.subject if {
	some i in input.inflows
	i.water == "greywater"
	i.enters_train == false
}

excused contains {"subject": i.subject, "reason": "its water is no greywater"} if {
	some i in input.inflows
	i.water in {"toilet waste", "kitchen waste", "clear water", "brine"}
}
