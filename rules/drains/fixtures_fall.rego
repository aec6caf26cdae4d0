# METADATA
# title: Every fixture lies above what it drains into.
# description: >-
#   Water does not rise by itself. A diverter or pipe set higher than the shower's outlet fills the trap and the tray,
#   and the floor is the way out.
# custom:
#   subjects: fixture_falls
#   level: fail
#   measures:
#     - {field: falls}
#     - {field: drop}
#   remedy: >-
#     Set {next} lower than the outlet of {fixture}, or correct the levels drawn: as drawn, {fixture} lies {drop} above
#     it; a negative height means that the water would have to rise.
#   caution: pathogens
#   sources:
#     - title: Chicago Plumbing Code 18-29-704.2
#       place: slope never reversed in the direction of flow
#       standing: published
package greysill.drains.fixtures_fall

import rego.v2

proved contains f.subject if {
	some f in input.fixture_falls
	f.falls == true
}
