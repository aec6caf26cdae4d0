# METADATA
# title: A small child can neither lift nor slide the lid of a covered tank or basin.
# description: >-
#   A child that falls into a tank cannot climb out, and nobody hears it. A lid that one hand lifts is no cover for a
#   child, and one that has slid aside is a trap.
# custom:
#   subjects: open_water
#   level: fail
#   measures:
#     - {field: childproof}
#     - {field: kind}
#   remedy: >-
#     Fit {subject} with a lid that is locked or bolted down, and say so of it (childproof). A stone laid on top is not
#     enough.
#   caution: open_water
#   sources:
#     - title: Texas Health and Safety Code 341.039
#       place: (c)(4), a tank that children cannot get into
#       standing: published
#     - title: New Mexico Administrative Code 20.7.3.809 (2013)
#       place: a tank's lid that cannot be tampered with
#       standing: published
package greysill.exposure.childproof_lid

import rego.v2

proved contains w.subject if {
	some w in input.open_water
	w.kind in {"surge tank", "settling basin"}
	w.lies_open == false
	w.childproof == true
}

excused contains {"subject": w.subject, "reason": "it lies open; exposure/barrier and open_water_ahead judge it"} if {
	some w in input.open_water
	w.lies_open == true
}

excused contains {"subject": w.subject, "reason": "the codes that were read ask it of tanks"} if {
	some w in input.open_water
	w.lies_open == false
	w.kind == "filter"
}
