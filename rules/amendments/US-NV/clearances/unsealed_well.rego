# METADATA
# title: What lets greywater into the ground keeps half as much again from a well that is not sealed.
# description: >-
#   Without a seal the space round the casing is a way straight down, past all the soil that would clean the water.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: nevada_unsealed_well_from_field, where: {casing: not grouted}}
#     - {field: casing}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or show by the driller's record that {feature} is sealed to 50 ft down.
#   caution: pathogens
#   sources:
#     - title: Nevada Administrative Code 444.792, disposal field of an individual sewage disposal system
#       place: other wells
#       standing: published
package greysill.clearances.unsealed_well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.nevada_unsealed_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "the well is grouted; that the seal reaches 50 ft down is for the driller's record"} if {
	some c in input.clearances.well
	c.works == "field"
	c.casing == "grouted"
	c.distance < data.limits.nevada_unsealed_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "it lets no greywater into the ground"} if {
	some c in input.clearances.well
	c.works in {"tank", "pipe", "fitting"}
}
