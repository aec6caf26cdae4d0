# METADATA
# title: Between two parts that lie apart, the pipe is drawn.
# description: >-
#   A pipe that is left out has no fall, no cover, no width and no place that anybody could check: it may freeze, run
#   uphill or cross a gas line. No reviewer can accept a plan on which the water jumps.
# custom:
#   subjects: gaps
#   level: fail
#   measures:
#     - {field: meets}
#     - {field: gap}
#   remedy: >-
#     Draw the pipe from {part} to {next}, or draw the two so that they meet. As drawn, {gap} lies between them in
#     plan. How exact places are meant to be is said by the distance among the tolerances.
#   sources:
#     - title: A plan shows pipes from end to end
#       standing: common practice
package greysill.drains.pipe_drawn

import rego.v2

proved contains w.subject if {
	some w in input.gaps
	w.part_kind in {
		"diverter", "surge tank", "filter", "planted gravel bed", "settling basin", "pond", "mulch basin",
		"infiltration trench",
	}
	w.meets == true
}

excused contains {"subject": w.subject, "reason": "both stand in one building, where its plumbing joins them"} if {
	some w in input.gaps
	w.meets == false
	w.indoors == true
}

excused contains {"subject": w.subject, "reason": "it is a pipe, whose end drains/pipe_reaches_soil judges"} if {
	some w in input.gaps
	w.part_kind in {"drain pipe", "overflow pipe"}
}
