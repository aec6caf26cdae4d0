# METADATA
# title: Greywater is let in under cover of gravel, mulch or soil.
# description: >-
#   The cover keeps hands, paws and flies from the greywater and lets the soil take it up before it can run off. No
#   reviewer can accept a plan that does not show it.
# custom:
#   subjects: discharges
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: cover, bound: at least, limit: discharge_cover}
#   remedy: >-
#     Add {short} of gravel, mulch or soil over the place where {subject} lets the water in, or set that place lower.
#   caution: pathogens
#   sources:
#     - title: Plumas County, California, summary of the plumbing code's rules for clothes washer systems
#       place: California Plumbing Code 1602.1.1
#       standing: published
#     - title: Washington Administrative Code 246-274-100
#       place: (1)(k), which asks 4 in
#       standing: published
package greysill.exposure.discharge_cover

import rego.v2

proved contains d.subject if {
	some d in input.discharges
	d.cover >= data.limits.discharge_cover.value
}
