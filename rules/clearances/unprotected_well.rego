# METADATA
# title: Greywater soaks in at a wider distance from a public well and from one that is not grouted.
# description: >-
#   Grout is the cement round the casing of a well. Without it, water from the surface runs down outside the casing,
#   past all the soil that should clean it. And from a public well many people drink. A plan that does not say which
#   it is leaves the wider distance to be kept.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: unprotected_well_from_field, where: {works: field}}
#     - {field: serves}
#     - {field: casing}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}; or, where it is private, have a licensed well driller show
#     that its casing is grouted, and write that on the plan. The health department may accept less where it knows the
#     ground.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3, ungrouted private source, more where the regulator asks it
#       standing: published
#     - title: City code of Deming, New Mexico
#       place: B.1.d, public well
#       standing: published
package greysill.clearances.unprotected_well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.unprotected_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "the well is private and grouted"} if {
	some c in input.clearances.well
	c.works == "field"
	c.serves == "a household"
	c.casing == "grouted"
	c.distance < data.limits.unprotected_well_from_field.value
}

excused contains {"subject": c.subject, "reason": "it lets no water into the ground"} if {
	some c in input.clearances.well
	c.works in {"tank", "pipe", "fitting"}
}
