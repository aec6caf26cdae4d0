# METADATA
# title: Greywater enters the sewer through an air gap or backwater valves, at every height.
# description: >-
#   A sewer that is blocked fills up to the next opening. Texas does not go by levels: an air gap, or two backwater valves
#   in line, stand in every way to the sewer. The drawing shows that one is there, not how many.
# custom:
#   subjects: sewer_ways
#   level: fail
#   measures:
#     - {field: backwater}
#   remedy: >-
#     Put an air gap, or two backwater valves in line that can be reached, between {part} and {connection}.
#   caution: sewer_connection
#   sources:
#     - title: Texas Administrative Code, title 30, section 210.83
#       place: (d)(1)
#       standing: published
package greysill.diversion.sewer_entry

import rego.v2

proved contains w.subject if {
	some w in input.sewer_ways
	w.backwater == "valve or air gap"
}
