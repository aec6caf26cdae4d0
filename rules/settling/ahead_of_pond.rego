# METADATA
# title: Whatever runs into a pond has settled first.
# description: >-
#   What water carries sinks where it slows down. Out of a basin of its own, mud, lint and leaves are taken in an
#   afternoon. Spread over the floor of a pond they rot, feed algae and use up the oxygen.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: settled_first}
#     - {field: unsettled_sources}
#   remedy: >-
#     Lead the water of {unsettled_sources} through a settling basin before {subject}, or away from it.
#   caution: open_water
#   sources:
#     - title: Maryland Stormwater Design Manual (2000)
#       place: forebay ahead of a pond
#       standing: from memory
package greysill.settling.ahead_of_pond

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.settled_first == true
}
