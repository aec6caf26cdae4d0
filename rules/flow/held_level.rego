# METADATA
# title: Water stands at the level that its outlet holds.
# description: >-
#   Water rises to its outlet and no higher. Where the two are drawn at different levels, one of them is wrong, and
#   with it every depth, volume and time that was worked out from the water level.
# custom:
#   subjects: held_levels
#   level: warn
#   measures:
#     - {field: at_outlet}
#     - {field: off_outlet}
#   remedy: >-
#     Draw the water level of {subject}, {water_level}, and its outlet, {outlet_level}, at the same level: they are
#     {off_outlet} apart. How exact levels are meant to be is said by the level among the tolerances.
#   sources:
#     - title: Water stands level with the outlet that holds it
#       standing: common practice
package greysill.flow.held_level

import rego.v2

proved contains p.subject if {
	some p in input.held_levels
	p.at_outlet == true
}
