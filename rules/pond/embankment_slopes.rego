# METADATA
# title: Both sides of a pond's embankment are flat enough to stand.
# description: >-
#   Wet earth slumps where it is steep, most of all when the pond is let down quickly. Then the top sinks, and
#   the next storm goes over it.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: inside_slope, bound: at most, limit: embankment_slope}
#     - {field: outside_slope, bound: at most, limit: embankment_slope}
#     - {field: embankment_runs, bound: at least, limit: embankment_runs}
#   remedy: >-
#     Flatten the embankment of {subject}. As drawn its inside slopes {inside_slope} and its outside
#     {outside_slope}; both sides together run {embankment_runs} for a rise of 1.
#   caution: open_water
#   sources:
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: no side steeper than 2 to 1
#       standing: from memory
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: both sides together 5 to 1
#       standing: from memory
package greysill.pond.embankment_slopes

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.has_embankment == true
	b.inside_slope <= data.limits.embankment_slope.value
	b.outside_slope <= data.limits.embankment_slope.value
	b.embankment_runs >= data.limits.embankment_runs.value
}

excused contains {"subject": b.subject, "reason": "no embankment is drawn"} if {
	some b in input.ponds
	b.has_embankment == false
}
