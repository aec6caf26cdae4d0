# METADATA
# title: The flow is small enough to need no permit.
# description: >-
#   From 250 gal/d on the state wants a permit, a treatment unit and a tank of a day's flow. Nothing may be dug before the
#   permit is there.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: daily_flow, bound: at most, limit: new_mexico_permit_free_flow}
#   remedy: >-
#     Apply to the Environment Department for a permit before anything is dug, or leave fixtures out until the flow is
#     {short} less.
#   sources:
#     - title: New Mexico Statutes 74-6-4
#       standing: published
#     - title: New Mexico Administrative Code 20.7.3.809 and .810
#       standing: published
package greysill.flow.permit_free

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.daily_flow <= data.limits.new_mexico_permit_free_flow.value
}
