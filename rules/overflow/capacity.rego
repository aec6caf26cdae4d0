# METADATA
# title: Every spillway and overflow pipe carries the peak of the design storm.
# description: >-
#   In a storm, rain comes in faster than a bed or pond lets it out. What the overflow cannot carry goes over the
#   rim, takes the bank with it and floods whatever lies below. The reckoning takes the low end of the
#   coefficients and holds nothing back above.
# custom:
#   subjects: spillways
#   level: fail
#   measures:
#     - {field: capacity_to_storm, bound: at least, limit: overflow_capacity}
#     - {field: least_capacity}
#     - {field: storm_flow}
#   remedy: >-
#     Make {subject} wider, or set it lower under the rim: it carries {least_capacity} before the water stands
#     at the rim of {serves}, and the storm brings {storm_flow}. Or lead storm water away before it gets there.
#   caution: pathogens
#   sources:
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: spillways carry the peak of the design storm
#       standing: from memory
#     - title: What goes over carries what comes in
#       standing: common practice
#     - title: Rational method, flow = coefficient × intensity × area
#       standing: common practice
package greysill.overflow.capacity

import rego.v2

proved contains w.subject if {
	some w in input.spillways
	w.below_rim == true
	w.storm_flow > 0
	w.capacity_to_storm >= data.limits.overflow_capacity.value
}

excused contains {"subject": w.subject, "reason": "no storm water reaches it"} if {
	some w in input.spillways
	w.storm_flow == 0
}

excused contains {
	"subject": w.subject,
	"reason": "it does not lie below the rim, which overflow/below_rim judges",
} if {
	some w in input.spillways
	w.storm_flow > 0
	w.below_rim == false
}
