# METADATA
# title: Water runs fast enough in every pipe to carry its solids along.
# description: >-
#   Below this speed hair, lint and soap settle and the pipe closes from the bottom up. Its fall can be right and its
#   wall too rough, or its bore too narrow, for the water to gather speed.
# custom:
#   subjects: pipe_flow
#   level: warn
#   measures:
#     - {field: half_full_velocity, bound: at least, limit: self_cleansing_velocity}
#     - {field: slope, bound: at least, limit: drain_slope}
#   remedy: >-
#     Lay {subject} steeper than its {slope}, or smoother than a Manning's n of {roughness}.
#   sources:
#     - title: American Society of Plumbing Engineers, Data Book, volume 2
#       place: chapter 4, horizontal storm drains
#       standing: published
package greysill.drains.self_cleansing

import rego.v2

proved contains f.subject if {
	some f in input.pipe_flow
	f.slope >= data.limits.drain_slope.value
	f.half_full_velocity >= data.limits.self_cleansing_velocity.value
}

excused contains {"subject": f.subject, "reason": "its slope is too small already, which drains/slope judges"} if {
	some f in input.pipe_flow
	f.slope < data.limits.drain_slope.value
}
