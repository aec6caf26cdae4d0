# METADATA
# title: Every pipe carries the most that can come to it at once.
# description: >-
#   When more comes than a pipe carries, it runs under pressure, and the lowest shower tray or floor drain is the way out.
# custom:
#   subjects: pipe_flow
#   level: fail
#   measures:
#     - {field: share_of_capacity, bound: at most, limit: drain_capacity}
#     - {field: slope, bound: at least, limit: drain_slope}
#   remedy: >-
#     Lay {subject} wider than {diameter} or steeper than {slope}, or take some of the {fixture_units_ipc} fixture units,
#     or the rain, off it.
#   caution: pathogens
#   sources:
#     - title: A pipe carries no more than it holds
#       standing: common practice
#     - title: Chicago Plumbing Code 18-29-709.3
#       place: 1 gal/min for each fixture unit
#       standing: published
package greysill.drains.capacity

import rego.v2

proved contains f.subject if {
	some f in input.pipe_flow
	f.slope >= data.limits.drain_slope.value
	f.share_of_capacity <= data.limits.drain_capacity.value
}

excused contains {"subject": f.subject, "reason": "its slope is too small already, which drains/slope judges"} if {
	some f in input.pipe_flow
	f.slope < data.limits.drain_slope.value
}
