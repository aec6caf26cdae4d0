# METADATA
# title: What lets greywater into the ground keeps half as much again from a well that serves the public.
# description: >-
#   Whoever drinks from a public well cannot know what is let into the ground beside it, and there are many of them.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: nevada_public_well_from_field, where: {serves: the public}}
#     - {field: serves}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: Nevada Administrative Code 444.792, disposal field of an individual sewage disposal system
#       place: public well
#       standing: published
package greysill.clearances.public_well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.nevada_public_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "the well does not serve the public"} if {
	some c in input.clearances.well
	c.works == "field"
	c.serves == "a household"
	c.distance < data.limits.nevada_public_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "it lets no greywater into the ground"} if {
	some c in input.clearances.well
	c.works in {"tank", "pipe", "fitting"}
}
