# METADATA
# title: Every diverter shows which way the water goes.
# description: >-
#   A handle that looks the same both ways is left the wrong way round, and nobody notices until the bed is frozen or
#   the garden smells. California asks for it; other codes that were read say nothing.
# custom:
#   subjects: diverters
#   level: warn
#   measures:
#     - {field: shows_direction}
#   remedy: >-
#     Choose a valve for {subject} whose handle or pointer shows the way that the water takes, or mark both positions.
#   sources:
#     - title: Digest of the California Plumbing Code's sections on greywater, by section number
#       place: California Plumbing Code 1602.2.3
#       standing: published
package greysill.diversion.shows_direction

import rego.v2

proved contains d.subject if {
	some d in input.diverters
	d.shows_direction == true
}
