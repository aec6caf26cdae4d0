# METADATA
# title: Every diverter is labelled.
# description: >-
#   Whoever runs the house next, or looks after it for a week, has to know what the handle does. California asks for a
#   label; other codes that were read leave it to the installer.
# custom:
#   subjects: diverters
#   level: warn
#   measures:
#     - {field: labelled}
#   remedy: >-
#     Put a lasting label on {subject} that says what it diverts and when to turn it.
#   sources:
#     - title: Plumas County, California, summary of the plumbing code's rules for clothes washer systems
#       place: California Plumbing Code 1602.1.1
#       standing: published
package greysill.diversion.labelled

import rego.v2

proved contains d.subject if {
	some d in input.diverters
	d.labelled == true
}
