# METADATA
# title: Untreated greywater stays in a surge tank for no longer than a day.
# description: >-
#   Greywater that stands turns foul and smells within a day, and germs multiply in it. A surge tank is to even out
#   the rush of a bath or a washer, not to store.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: detention, bound: at most, limit: tank_standing_time, where: {kind: surge tank}}
#     - {field: volume}
#   remedy: >-
#     Take a smaller tank for {subject}, or set its outlet lower, so that what stays in it is used up within {limit}:
#     it holds {volume}, and {flow} run through it.
#   caution: pathogens
#   sources:
#     - title: Colorado Regulation 86, 5 CCR 1002-86 (2024)
#       place: 86.14(B)(6)
#       standing: published
#     - title: New Mexico Administrative Code 20.7.3.809 (2013)
#       place: H
#       standing: published
#     - title: Washington Administrative Code 246-274-300
#       place: (2)
#       standing: published
package greysill.exposure.standing_time

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.kind == "surge tank"
	s.detention <= data.limits.tank_standing_time.value
}

excused contains {"subject": s.subject, "reason": "a settling basin holds water so that it settles"} if {
	some s in input.settling
	s.kind == "settling basin"
}
