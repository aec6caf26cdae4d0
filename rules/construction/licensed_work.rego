# METADATA
# title: The plan says what it leaves to licensed people.
# description: >-
#   A connection to the sewer, a cable, a gas line and a water line each kill or poison people who work on them without
#   knowing how. A reviewer wants to see that somebody else is meant to.
# custom:
#   subjects: licensed_work
#   level: warn
#   measures:
#     - {field: named}
#     - {field: because_of}
#   remedy: >-
#     Name {work} among the licensed work of the construction, and have it done by a licensed person under a permit. What
#     brings it: {because_of}.
#   caution: sewer_connection
#   sources:
#     - title: Work on sewers, electricity, gas and drinking water takes a licence
#       standing: common practice
package greysill.construction.licensed_work

import rego.v2

proved contains l.subject if {
	some l in input.licensed_work
	l.named == true
}
