# METADATA
# title: What lets greywater into the soil lies where there is air in it.
# description: >-
#   The germs that clean the water live in the uppermost soil, where air reaches. Deeper down the water goes on to the
#   groundwater as it came.
# custom:
#   subjects: soakage
#   level: warn
#   measures:
#     - {field: bottom_depth, bound: at most, limit: england_field_depth}
#   remedy: >-
#     Raise the bottom of {subject} by {short}: it lies {bottom_depth} below the ground, and the drainage field is to
#     lie within {limit} of it.
#   caution: pathogens
#   sources:
#     - title: Approved Document H (2015), as a summary for planning restates it
#       place: H2, drainage field within 700 mm of ground level
#       standing: published
package greysill.dispersal.field_depth

import rego.v2

proved contains s.subject if {
	some s in input.soakage
	s.bottom_depth <= data.limits.england_field_depth.value
}
