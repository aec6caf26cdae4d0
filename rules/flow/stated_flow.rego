# METADATA
# title: A stated flow is not less than the code counts.
# description: >-
#   Families grow and houses are sold. A system sized for the two careful people who drew it fails under the next ones.
# custom:
#   subjects: demand
#   level: warn
#   measures:
#     - {field: stated_share, bound: at least, limit: stated_flow}
#   remedy: >-
#     Size everything for {daily_flow_by_occupants}, which the code counts, in place of the {stated_flow} stated; or show
#     the authority the readings that the figure comes from.
#   sources:
#     - title: California Plumbing Code
#       place: section 1503.8.1
#       standing: published
package greysill.flow.stated_flow

import rego.v2

proved contains d.subject if {
	some d in input.demand
	d.states_flow == true
	d.stated_share >= data.limits.stated_flow.value
}

excused contains {"subject": d.subject, "reason": "no flow of its own is stated"} if {
	some d in input.demand
	d.states_flow == false
}
