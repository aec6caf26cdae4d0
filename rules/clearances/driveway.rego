# METADATA
# title: Nothing that holds or takes up greywater lies under a driveway.
# description: >-
#   Wheels press the soil together until it takes no water, crush pipes and lids, and paving keeps out the air that
#   cleans the water. What has to be dug up there is not kept up.
# custom:
#   subjects: clearances.paving
#   level: warn
#   measures:
#     - {field: touches}
#     - {field: distance}
#   remedy: >-
#     Move {part} out from under {feature}, or have an engineer show that it bears the traffic.
#   caution: digging
#   sources:
#     - title: Nevada Administrative Code 444.8301 and 444.818
#       place: no system under traffic or paving
#       standing: published
package greysill.clearances.driveway

import rego.v2

proved contains c.subject if {
	some c in input.clearances.paving
	c.works in {"field", "tank"}
	c.touches == false
}

excused contains {"subject": c.subject, "reason": "a pipe may pass under a driveway"} if {
	some c in input.clearances.paving
	c.works in {"pipe", "fitting"}
}
