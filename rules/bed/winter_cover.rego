# METADATA
# title: A planted gravel bed that runs in a month that freezes lies under mulch.
# description: >-
#   Wet gravel freezes from the top. A thick layer of mulch keeps the heat of the greywater in; without it the inlet
#   freezes first and the water comes up. This is what Michigan asks of every bed; treatment/winter reckons whether it is
#   enough here.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: mulch, bound: at least, limit: winter_mulch}
#     - {field: runs_in_frost}
#   remedy: >-
#     Lay {short} more mulch over {subject} before the first frost, well rotted and free of seeds, or let the bypass
#     season cover every month that freezes.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(x)
#       standing: published
package greysill.bed.winter_cover

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.runs_in_frost == true
	b.mulch >= data.limits.winter_mulch.value
}

excused contains {"subject": b.subject, "reason": "it does not run in a month that freezes"} if {
	some b in input.beds
	b.runs_in_frost == false
}
