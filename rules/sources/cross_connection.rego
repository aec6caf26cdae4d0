# METADATA
# title: No pipe joins the drinking water to the greywater system.
# description: >-
#   When a main breaks or a fire engine draws on it, the pressure falls and whatever is joined to the pipes is sucked
#   into them. A shut valve leaks, and somebody opens it. Germs from the greywater then come out of every tap.
# custom:
#   subjects: system
#   level: fail
#   measures:
#     - {field: cross_connection}
#   remedy: >-
#     Cut the connection and cap it on the side of the drinking water. Where the system needs water from there, let it
#     fall in through an air gap and draw that as make_up of the part that it fills.
#   caution: drinking_water
#   sources:
#     - title: Plumas County, California, summary of the plumbing code's rules for clothes washer systems
#       place: California Plumbing Code 1602.1.1
#       standing: published
#     - title: International Plumbing Code, protection of the potable water supply
#       place: section 608
#       standing: from memory
package greysill.sources.cross_connection

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.cross_connection == false
}
