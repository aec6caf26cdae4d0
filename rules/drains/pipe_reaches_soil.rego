# METADATA
# title: Every pipe to a mulch basin or trench is drawn up to it.
# description: >-
#   Where a pipe ends short of the basin, the greywater comes out in bare ground, or somebody makes up the rest in the
#   trench with whatever fall is left.
# custom:
#   subjects: gaps
#   level: warn
#   measures:
#     - {field: meets}
#     - {field: gap}
#   remedy: >-
#     Draw {part} on until it meets {next}. As drawn, {gap} lies between them in plan. How exact places are meant to be
#     is said by the distance among the tolerances.
#   sources:
#     - title: A plan shows pipes from end to end
#       standing: common practice
package greysill.drains.pipe_reaches_soil

import rego.v2

proved contains w.subject if {
	some w in input.gaps
	w.part_kind in {"drain pipe", "overflow pipe"}
	w.meets == true
}

excused contains {"subject": w.subject, "reason": "it is no pipe; drains/pipe_drawn judges it"} if {
	some w in input.gaps
	w.part_kind in {
		"diverter", "surge tank", "filter", "planted gravel bed", "settling basin", "pond", "mulch basin",
		"infiltration trench",
	}
}
