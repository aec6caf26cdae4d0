# METADATA
# title: The house drains to the sewer.
# description: >-
#   Only on a sewered lot may greywater be diverted without the council's approval. Where a sewage management
#   facility, such as a septic tank, stands on the lot, the council has to approve first.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: sewage}
#   remedy: >-
#     Apply to the council for approval before anything is dug: the house drains to a {sewage}.
#   sources:
#     - title: New South Wales Local Government (General) Regulation 2021
#       place: s. 75A
#       standing: published
package greysill.site.sewered

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.sewage == "sewer"
}
