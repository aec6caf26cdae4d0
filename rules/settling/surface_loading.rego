# METADATA
# title: A settling basin has the surface that the laundry and the daily flow want.
# description: >-
#   What settles depends on the surface of a basin, not on its depth: water that rises faster than silt sinks
#   carries it on into the gravel, where nobody gets it out again. A washer that pumps out is the test. Lint and
#   soap are lighter than silt and settle worse, so this is the least.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: surge_surface_loading, bound: at most, limit: settling_surface_loading}
#     - {field: surface_loading, bound: at most, limit: settling_surface_loading}
#   remedy: >-
#     Give {subject} more surface than {area}, or slow the laundry down with a surge tank before it. While the
#     laundry drains, {surge_rate} reaches it.
#   caution: pathogens
#   sources:
#     - title: A consultant's calculation after guidance of the U.S. EPA (1992) and Washington State
#       place: surface = 1.2 × flow ÷ 0.00096 ft/s
#       standing: published
package greysill.settling.surface_loading

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.kind == "settling basin"
	s.surge_surface_loading <= data.limits.settling_surface_loading.value
	s.surface_loading <= data.limits.settling_surface_loading.value
}

excused contains {"subject": s.subject, "reason": "a surge tank evens out the flow and is not there to settle"} if {
	some s in input.settling
	s.kind == "surge tank"
}
