# METADATA
# title: Pipes that run in winter lie below the frost or are insulated.
# description: >-
#   Greywater comes in small lots. In frozen ground each leaves a film of ice behind, until the pipe is shut and the house
#   drains nowhere.
# custom:
#   subjects: pipes
#   level: warn
#   measures:
#     - {field: cover_below_frost, bound: at least, limit: cover_below_frost}
#   remedy: >-
#     Lay {subject} {short} deeper than its cover of {least_cover}, or insulate it, 1 in for each foot of soil that is
#     lacking; or turn its water to the sewer before it, while the ground is frozen.
#   caution: digging
#   sources:
#     - title: Chicago Plumbing Code 18-29-704.5.1
#       place: no outside drain without protection from freezing
#       standing: published
#     - title: Alaska Administrative Code 18 AAC 72.630
#       place: (c), cover over lines against frost, 1 in of insulation in place of 1 ft of soil
#       standing: published
package greysill.drains.frost

import rego.v2

proved contains p.subject if {
	some p in input.pipes
	p.indoors == false
	p.runs_in_winter == true
	p.cover_below_frost >= data.limits.cover_below_frost.value
}

excused contains {"subject": p.subject, "reason": "no water is sent through it while the ground is frozen"} if {
	some p in input.pipes
	p.runs_in_winter == false
}

excused contains {"subject": p.subject, "reason": "all of it lies inside a building"} if {
	some p in input.pipes
	p.runs_in_winter == true
	p.indoors == true
}
