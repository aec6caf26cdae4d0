# METADATA
# title: Roof, foundation and storm water stays out of the sewer and the septic tank.
# description: >-
#   A sewer for sewage has no room for a storm: it backs up into the lowest house on the street. A septic tank is washed
#   out by it, and its field drowned. Where the town has one sewer for both, it says so.
# custom:
#   subjects: inflows
#   level: warn
#   measures:
#     - {field: water}
#     - {field: reaches_sewer}
#     - {field: route}
#   remedy: >-
#     Lead {subject} onto ground of your own that falls away from buildings, or to the storm sewer; or name the consent of
#     the sewer's operator as a variance.
#   caution: sewer_connection
#   sources:
#     - title: Uniform Plumbing Code, as California prints its chapter 11
#       place: 1101.1 and 1101.2
#       standing: published
#     - title: City code of Luverne, Minnesota, sump pumps, footing tiles and roofs kept out of the sanitary sewer
#       standing: published
package greysill.sources.storm_to_sewer

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "kitchen waste", "brine"}
}

proved contains i.subject if {
	some i in input.inflows
	i.reaches_sewer == false
}

excused contains {"subject": i.subject, "reason": "what it drips is little, and sewers take it"} if {
	some i in input.inflows
	i.reaches_sewer == true
	i.water == "clear water"
	i.kind == "condensate drain"
}

excused contains {"subject": i.subject, "reason": "it joins greywater, which sources/clear_water judges"} if {
	some i in input.inflows
	i.reaches_sewer == true
	i.water == "clear water"
	i.joins_untreated == true
}
