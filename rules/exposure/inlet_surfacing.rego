# METADATA
# title: In a bed clogged as far as the European guideline allows for, no water comes up through the gravel at the inlet.
# description: >-
#   Water has to stand higher at the inlet than at the outlet to run through the gravel, and the more so the more the
#   gravel clogs. Once it stands above the gravel, untreated greywater lies in the open. The rise is taken for the
#   developed bed of the European guideline, the same for every gravel; new gravel lets far more through.
# custom:
#   subjects: head_loss
#   level: fail
#   measures:
#     - {field: rise_share, bound: at most, limit: water_rise_share}
#     - {field: rise}
#     - {field: clogging}
#   remedy: >-
#     Make {bed} wider or shorter along the course of the water, or lower its outlet so that more dry gravel lies over
#     the water. As drawn, the water rises by {rise} toward the inlet, {rise_share} of the dry gravel there.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(g)
#       standing: published
#     - title: Utah Administrative Code R317-401-3 (2024)
#       place: 3.2(a)
#       standing: published
#     - title: EC/EWPCA, European design and operations guidelines for reed bed treatment systems (1990)
#       place: conductivity of a developed bed
#       standing: from memory
#     - title: Pedescoll and others, Water, Air and Soil Pollution 223 (2012)
#       place: conductivity measured in clogged beds
#       standing: published
package greysill.exposure.inlet_surfacing

import rego.v2

proved contains c.subject if {
	some c in input.head_loss
	c.clogging == "developed bed"
	c.rise_share <= data.limits.water_rise_share.value
}

excused contains {"subject": c.subject, "reason": "the rule goes by a developed bed"} if {
	some c in input.head_loss
	c.clogging in {"clean media", "a third", "two zones"}
}
