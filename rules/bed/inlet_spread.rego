# METADATA
# title: The inlet header spreads the water across the bed's width.
# description: >-
#   Where the water comes in at one spot, it keeps to one lane through the gravel: that lane clogs, and the rest of
#   the bed does nothing.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: inlet_spread, bound: at least, limit: inlet_spread}
#   remedy: >-
#     Make the inlet header of {subject} longer, square to the way that the water takes: as drawn it reaches across
#     {inlet_spread} of the width, at least {limit} is wanted.
#   sources:
#     - title: Eawag, sheet on horizontal subsurface flow wetlands, read in a copy
#       place: inlet across the full width
#       standing: published
#     - title: A header ends a little short of the liner on both sides
#       standing: common practice
package greysill.bed.inlet_spread

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.inlet_spread >= data.limits.inlet_spread.value
}
