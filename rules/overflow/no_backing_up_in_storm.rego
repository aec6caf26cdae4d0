# METADATA
# title: Water does not back up from one part into the part before it in the design storm either.
# description: >-
#   A storm raises the water in ponds and basins by what their way out needs to let it go. Where it then stands
#   over the outlet of the part before, greywater that has not been treated is held back when the most water
#   comes.
# custom:
#   subjects: drops
#   level: warn
#   measures:
#     - {field: drowned_in_storm}
#     - {field: storm_drop}
#   remedy: >-
#     Give {downstream} a wider way out, or raise the outlet of {upstream}, so that its water falls freely in
#     the storm too.
#   caution: pathogens
#   sources:
#     - title: Every part drains freely into the next
#       standing: common practice
package greysill.overflow.no_backing_up_in_storm

import rego.v2

proved contains p.subject if {
	some p in input.drops
	p.into_soil == false
	p.drowned_dry == false
	p.drowned_in_storm == false
}

excused contains {"subject": p.subject, "reason": "how high a storm stands in soil or gravel is not worked out"} if {
	some p in input.drops
	p.into_soil == true
	p.drowned_dry == false
}

excused contains {
	"subject": p.subject,
	"reason": "it backs up in ordinary flow, which overflow/no_backing_up judges",
} if {
	some p in input.drops
	p.drowned_dry == true
}
