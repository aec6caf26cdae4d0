# METADATA
# title: The rim stands well above the overflow.
# description: >-
#   Banks settle, leaves lie in the way out, roots lift the floor of it. Freeboard is the height left for all of
#   that before water goes over the rim.
# custom:
#   subjects: spillways
#   level: warn
#   measures:
#     - {field: head, bound: at least, limit: overflow_freeboard}
#   remedy: >-
#     Raise the rim of {serves} by {short}, or set {subject} lower by as much.
#   caution: pathogens
#   sources:
#     - title: GIZ, Technology review of constructed wetlands (2011)
#       place: freeboard of a horizontal-flow bed
#       standing: from memory
package greysill.overflow.freeboard

import rego.v2

proved contains w.subject if {
	some w in input.spillways
	w.below_rim == true
	w.serves_pond == false
	w.head >= data.limits.overflow_freeboard.value
}

excused contains {"subject": w.subject, "reason": "it serves a pond, whose freeboard pond/freeboard judges"} if {
	some w in input.spillways
	w.serves_pond == true
}

excused contains {
	"subject": w.subject,
	"reason": "it does not lie below the rim, which overflow/below_rim judges",
} if {
	some w in input.spillways
	w.serves_pond == false
	w.below_rim == false
}
