# METADATA
# title: No water stays standing in a pipe that lies in the frost.
# description: >-
#   What stands in a pipe when the bypass season begins freezes, bursts it or plugs it, and in spring the water comes up
#   where the pipe broke. A pipe that falls empty cannot freeze shut.
# custom:
#   subjects: pipe_winter
#   level: warn
#   measures:
#     - {field: standing_water, bound: at most, limit: standing_water_in_pipe, where: {winter: in the frost}}
#     - {field: winter}
#   remedy: >-
#     Raise {subject}, or lower what it drains to, until nothing is left standing in it: as drawn, {standing_water} is.
#     Or lay or insulate it so that it lies below the frost.
#   caution: digging
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (a)(iii), of systems used in winter
#       standing: published
#     - title: A pipe that is shut down for the winter is left empty
#       standing: common practice
package greysill.diversion.falls_empty

import rego.v2

proved contains w.subject if {
	some w in input.pipe_winter
	w.rises == false
	w.standing_water <= data.limits.standing_water_in_pipe.value
}

proved contains w.subject if {
	some w in input.pipe_winter
	w.rises == false
	w.winter in {"never freezes", "below the frost"}
}

excused contains {"subject": w.subject, "reason": "the pipe rises, which drains/slope judges"} if {
	some w in input.pipe_winter
	w.rises == true
}
