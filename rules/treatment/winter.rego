# METADATA
# title: A planted gravel bed that runs through its coldest month stays above freezing to its end.
# description: >-
#   A bed that freezes holds back the water, which comes up through the gravel and ice. The heat of the greywater has
#   to last to the outlet: it is reckoned without snow, which cannot be relied on, and with water that has cooled down
#   to the mean of the year on its way. Ground and sun are left out, which is on the safe side.
# custom:
#   subjects: bed_winter
#   level: warn
#   measures:
#     - {field: freezes}
#     - {field: thawed_share}
#   remedy: >-
#     Lay more mulch over {bed}, or let the bypass season cover {coldest_month}: with air of {air_temperature},
#     {thawed_share} of the bed stays open, counted from the inlet.
#   sources:
#     - title: Wyoming Water Quality Rules, chapter 25
#       place: section 17(a)(iii)
#       standing: published
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       place: chapter 7, thermal aspects
#       standing: published
package greysill.treatment.winter

import rego.v2

proved contains w.subject if {
	some w in input.bed_winter
	w.cover == "without snow"
	w.inlet == "cooled to the year's mean"
	w.runs_in_frost == true
	w.bypassed == false
	w.freezes == false
}

excused contains {"subject": w.subject, "reason": "the rule counts on no snow"} if {
	some w in input.bed_winter
	w.cover == "with snow"
}

excused contains {"subject": w.subject, "reason": "the rule takes the water as it has cooled down on its way"} if {
	some w in input.bed_winter
	w.cover == "without snow"
	w.inlet == "as it leaves the house"
}

excused contains {"subject": w.subject, "reason": "it does not run in a month that freezes"} if {
	some w in input.bed_winter
	w.cover == "without snow"
	w.inlet == "cooled to the year's mean"
	w.runs_in_frost == false
}

excused contains {"subject": w.subject, "reason": "the bypass season covers its coldest month"} if {
	some w in input.bed_winter
	w.cover == "without snow"
	w.inlet == "cooled to the year's mean"
	w.runs_in_frost == true
	w.bypassed == true
}
