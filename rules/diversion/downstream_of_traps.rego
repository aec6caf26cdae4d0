# METADATA
# title: Every diverter stands downstream of the fixtures' traps and vents.
# description: >-
#   The water in a trap keeps sewer gas out of the room. A diverter between fixture and trap opens the house to whatever
#   lies beyond it, and one ahead of the vent sucks the trap dry.
# custom:
#   subjects: diverters
#   level: fail
#   measures:
#     - {field: downstream_of_traps}
#   remedy: >-
#     Set {subject} where every trap and vent of the fixtures on it lies upstream, and have a licensed plumber fit it.
#   caution: sewer_connection
#   sources:
#     - title: Digest of the California Plumbing Code's sections on greywater, by section number
#       place: California Plumbing Code 1602.2.3
#       standing: published
package greysill.diversion.downstream_of_traps

import rego.v2

proved contains d.subject if {
	some d in input.diverters
	d.downstream_of_traps == true
}
