# METADATA
# title: Make-up water falls in through an air gap.
# description: >-
#   A filling pipe or hose that hangs in the water draws it back into the drinking water as soon as the pressure falls.
#   Open air between the pipe's mouth and the highest level that the water can reach is the one thing that always
#   stops it.
# custom:
#   subjects: make_up
#   level: fail
#   measures:
#     - {field: air_gap}
#     - {field: from}
#   remedy: >-
#     Let the make-up water of {subject} fall in from above its rim, from a height of twice the width of the pipe's
#     mouth or more, or leave the make-up water out.
#   caution: drinking_water
#   sources:
#     - title: International Plumbing Code, protection of the potable water supply, with an air gap of twice the opening
#       place: section 608
#       standing: from memory
#     - title: Plumas County, California, summary of the plumbing code's rules for clothes washer systems
#       place: California Plumbing Code 1602.1.1, no connection to potable water
#       standing: published
package greysill.sources.make_up_air_gap

import rego.v2

proved contains m.subject if {
	some m in input.make_up
	m.from == "drinking water"
	m.air_gap == true
}

excused contains {"subject": m.subject, "reason": "rainwater is not drunk"} if {
	some m in input.make_up
	m.from == "rainwater"
}
