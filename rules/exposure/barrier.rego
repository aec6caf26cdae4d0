# METADATA
# title: Open water has a barrier round it as high as towns ask, with a gate that latches by itself.
# description: >-
#   A small child drowns within minutes and without a sound, also in water that is not deep. Towns begin to ask for a
#   barrier at 6, 18 or 24 in of water; this rule asks for it at every depth, and no reviewer can accept open water of
#   which the plan does not show how children are kept away.
# custom:
#   subjects: open_water
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: barrier_height, bound: at least, limit: barrier_height}
#     - {field: gate_latches_itself}
#     - {field: water_depth}
#   remedy: >-
#     Draw a barrier at least {limit} high all round {subject}, with no gap of 4 in or more and
#     a gate that shuts and latches by itself, or cover the water, or leave it out. As drawn, the water is {water_depth}
#     deep.
#   caution: open_water
#   sources:
#     - title: Kirtland Hills, Ohio, code of ordinances, swimming pools
#       place: 24 in of water, 48 in of barrier
#       standing: published
#     - title: Mesquite, Nevada, city code, water features
#       place: 18 in of water, 5 ft of barrier, openings of less than 4 in
#       standing: published
#     - title: Pembroke Pines, Florida, city code, swimming pools
#       place: 6 in of water, ornamental and fish ponds named
#       standing: published
package greysill.exposure.barrier

import rego.v2

proved contains w.subject if {
	some w in input.open_water
	w.lies_open == true
	w.kind in {"pond", "settling basin"}
	w.barrier_height >= data.limits.barrier_height.value
	w.gate_latches_itself == true
}

excused contains {"subject": w.subject, "reason": "it is covered"} if {
	some w in input.open_water
	w.lies_open == false
}

excused contains {"subject": w.subject, "reason": "no water stands on a spillway"} if {
	some w in input.open_water
	w.lies_open == true
	w.kind == "spillway"
}

excused contains {
	"subject": w.subject,
	"reason": "an open tank or filter is to be covered, which exposure/open_water_ahead judges",
} if {
	some w in input.open_water
	w.lies_open == true
	w.kind in {"surge tank", "filter"}
	w.treated_first == false
}
