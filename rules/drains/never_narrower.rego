# METADATA
# title: No pipe leads into a narrower one.
# description: >-
#   What a wide pipe carries along lodges where it narrows, and the stoppage is buried.
# custom:
#   subjects: joins
#   level: fail
#   measures:
#     - {field: narrows}
#   remedy: >-
#     Make {next} at least as wide as {part}, which leads into it.
#   sources:
#     - title: Chicago Plumbing Code 18-29-704.2
#       place: size never reduced in the direction of flow
#       standing: published
package greysill.drains.never_narrower

import rego.v2

proved contains j.subject if {
	some j in input.joins
	j.narrows == false
}
