# METADATA
# title: Open water that water from the house reaches has a permit of its own.
# description: >-
#   A pond fed by water from the house, treated or not, is no part of a greywater system in the codes that were read: it falls
#   under the law on sewage lagoons or on discharges, which is another class of permit. Ask before anything is dug.
# custom:
#   subjects: open_water
#   level: warn
#   measures:
#     - {field: lies_open}
#     - {field: receives_wastewater}
#     - {field: has_permit}
#   remedy: >-
#     Ask the environment or health department what permit {subject} needs and name it on the drawing, or fill it from
#     rain alone and end the greywater in soil.
#   caution: open_water
#   sources:
#     - title: Wisconsin Administrative Code SPS 383.32
#       place: (1)(e)
#       standing: published
#     - title: Arizona Administrative Code R18-9-E318
#       place: 4.18 General Permit, a constructed wetland as part of a sewage system
#       standing: published
#     - title: United States Code, title 33, section 1362
#       place: (14)
#       standing: published
package greysill.exposure.open_water_permit

import rego.v2

proved contains w.subject if {
	some w in input.open_water
	w.lies_open == true
	w.has_permit == true
}

proved contains w.subject if {
	some w in input.open_water
	w.receives_wastewater == false
}

excused contains {"subject": w.subject, "reason": "its water lies covered"} if {
	some w in input.open_water
	w.lies_open == false
	w.receives_wastewater == true
}

excused contains {"subject": w.subject, "reason": "a spillway holds no water"} if {
	some w in input.open_water
	w.kind == "spillway"
	w.lies_open == true
	w.receives_wastewater == true
	w.has_permit == false
}
