# METADATA
# title: No sump, foundation, roof or storm water runs into the soil that takes up greywater.
# description: >-
#   The basin or trench is as large as the greywater needs. Storm water fills it just when the soil is soaked, and what
#   then comes up is both.
# custom:
#   subjects: inflows
#   level: warn
#   measures:
#     - {field: water}
#     - {field: joins_in_soil}
#     - {field: route}
#   remedy: >-
#     Lead {subject} to a place of its own, downhill of the basins and trenches of the greywater.
#   caution: pathogens
#   sources:
#     - title: Administrative Rules of South Dakota 74:53:01:17
#       place: no footing, roof or sump drainage into the system
#       standing: published
#     - title: Washington Administrative Code 246-274-440
#       place: footing and roof drains kept away
#       standing: published
package greysill.sources.clear_water_in_soil

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "toilet waste", "kitchen waste", "brine"}
}

proved contains i.subject if {
	some i in input.inflows
	i.joins_in_soil == false
}

excused contains {"subject": i.subject, "reason": "it joins untreated greywater, which sources/clear_water judges"} if {
	some i in input.inflows
	i.water == "clear water"
	i.joins_in_soil == true
	i.joins_untreated == true
}
