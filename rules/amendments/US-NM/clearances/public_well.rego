# METADATA
# title: What lets greywater into the ground keeps twice the distance from a well that serves the public.
# description: >-
#   Whoever drinks from a public well cannot know what is let into the ground beside it, and there are many of them.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: new_mexico_public_well_from_field, where: {serves: the public}}
#     - {field: serves}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: pathogens
#   sources:
#     - title: City of Deming, New Mexico, city code, restating the state's greywater rules
#       place: B.1.d
#       standing: published
package greysill.clearances.public_well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.new_mexico_public_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "the well does not serve the public"} if {
	some c in input.clearances.well
	c.works == "field"
	c.serves == "a household"
	c.distance < data.limits.new_mexico_public_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "it lets no greywater into the ground"} if {
	some c in input.clearances.well
	c.works in {"tank", "pipe", "fitting"}
}
