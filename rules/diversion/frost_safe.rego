# METADATA
# title: The second route of every diverter lies below the frost or in the warm.
# description: >-
#   In the bypass season it is the only way that the water has. When it freezes, the house has no drain, and what backs
#   up comes out of the lowest fixture.
# custom:
#   subjects: pipe_winter
#   level: fail
#   measures:
#     - {field: below_frost, bound: at least, limit: pipe_below_frost, where: {winter: in the frost}}
#     - {field: below_frost, bound: at least, limit: pipe_below_frost, where: {winter: below the frost}}
#     - {field: winter}
#   remedy: >-
#     Lay {subject} at least {short} deeper, or insulate it, or lead it through a heated space and say so. As drawn, its least cover
#     with its insulation counts as {insulated_cover} of soil, and the frost goes {frost_depth} deep.
#   caution: digging
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (a)(iii), of systems used in winter
#       standing: published
#     - title: Alaska Administrative Code 18 AAC 72.630
#       place: (c), 2 to 4 ft of cover by region, 1 in of insulation for 1 ft of soil
#       standing: published
package greysill.diversion.frost_safe

import rego.v2

proved contains w.subject if {
	some w in input.pipe_winter
	w.on_second_route == true
	w.below_frost >= data.limits.pipe_below_frost.value
}

proved contains w.subject if {
	some w in input.pipe_winter
	w.on_second_route == true
	w.winter == "never freezes"
}

excused contains {"subject": w.subject, "reason": "no second route runs through it"} if {
	some w in input.pipe_winter
	w.on_second_route == false
}
