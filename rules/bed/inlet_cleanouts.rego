# METADATA
# title: The inlet header can be flushed from a cleanout.
# description: >-
#   Lint and grease settle in the header, and the first holes close. A cleanout lets the owner rinse it in minutes;
#   without one the gravel has to be dug up.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: inlet_cleanouts, bound: at least, limit: inlet_cleanouts}
#   remedy: >-
#     Bring an end of the inlet header of {subject} up to the surface with a cap that can be reached; one at both ends
#     is better. As drawn it has {inlet_cleanouts}.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: Table 9
#       standing: published
#     - title: U.S. EPA 832-R-93-008 (1993), subsurface flow wetlands
#       standing: from memory
package greysill.bed.inlet_cleanouts

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.inlet_cleanouts >= data.limits.inlet_cleanouts.value
}
