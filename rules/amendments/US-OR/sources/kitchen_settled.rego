# METADATA
# title: Kitchen water settles or is filtered before anything takes it up.
# description: >-
#   Grease and food scraps clog gravel and mulch, smell, and feed germs. Oregon lets the water of a kitchen sink
#   in, but only after primary treatment, which takes out what sinks, floats and is coarse. A dishwasher is not
#   named in the text and stays on the sewer.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: water}
#     - {field: settles_first}
#     - {field: enters_train}
#     - {field: unsafe_ends}
#     - {field: route}
#   remedy: >-
#     Lead {subject} straight to the sewer or septic connection or, if it is a kitchen sink, through a settling
#     basin or filter before any bed, basin, trench or pond, and from there to a safe end.
#   caution: pathogens
#   sources:
#     - title: Oregon Administrative Rules 340-053-0090 (2011)
#       place: (1)(b)
#       standing: published
#     - title: Settling and filtering are what primary treatment is
#       standing: common practice
package greysill.sources.kitchen_settled

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "clear water", "brine"}
}

proved contains i.subject if {
	some i in input.inflows
	i.enters_train == false
	i.ends_in_sewer == true
}

proved contains i.subject if {
	some i in input.inflows
	i.kind == "kitchen sink"
	i.settles_first == true
	i.ends_safely == true
}
