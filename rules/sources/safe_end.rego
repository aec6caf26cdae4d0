# METADATA
# title: Water from the house ends in the sewer, a septic tank or the soil of one's own land.
# description: >-
#   Whatever runs on from there runs to somebody: a neighbour, a stream where children play, a well. Greywater spreads
#   illness as sewage does, treated in a gravel bed or not, and a pipe that lets it out into open water is a discharge
#   under the law on water pollution.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: ends_safely}
#     - {field: unsafe_ends}
#     - {field: route}
#   remedy: >-
#     Lead every way of {subject}, overflows too, to the sewer or septic connection, or to a mulch basin or infiltration
#     trench that drains no further. As drawn, some of its water ends here: {unsafe_ends}.
#   caution: pathogens
#   sources:
#     - title: Oregon Administrative Rules 340-053-0080
#       place: (6)
#       standing: published
#     - title: Utah Administrative Code R317-401-3 (2024)
#       place: 3.2(a)
#       standing: published
#     - title: United States Code, title 33, section 1362
#       place: (14), a pipe, ditch or channel as a point source
#       standing: published
#     - title: Wisconsin Administrative Code SPS 383.32
#       place: (1)(e) and (f)
#       standing: published
package greysill.sources.safe_end

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "kitchen waste", "brine"}
	i.ends_safely == true
}

excused contains {"subject": i.subject, "reason": "clear water goes by the storm drainage rules"} if {
	some i in input.inflows
	i.water == "clear water"
}
