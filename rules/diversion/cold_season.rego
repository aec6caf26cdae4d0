# METADATA
# title: The bypass season covers every month that freezes.
# description: >-
#   Frozen ground takes no water and a frozen outlet holds it back, so greywater sent out in frost comes up as ice in
#   the yard or stands in the pipe. A plan that does not say which months freeze, or when the bypass runs, leaves open
#   whether it works in winter at all; so here a missing entry counts as a failure.
# custom:
#   subjects: cold_season
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: bypass_covers_freezing_months}
#     - {field: freezing_months}
#     - {field: bypass_season}
#     - {field: months_left_open}
#   remedy: >-
#     Let the bypass season begin before the first freezing month and end after the last. Not covered as drawn:
#     {months_left_open}. Where the authority lets a system run in winter, show that nothing in it freezes and ask for a
#     variance.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(i), use in the growing season only
#       standing: published
#     - title: Wyoming Water Quality Rules, chapter 25, section 17
#       place: (a)(iii), of systems used in winter, which must not freeze
#       standing: published
package greysill.diversion.cold_season

import rego.v2

proved contains s.subject if {
	some s in input.cold_season
	s.any_month_freezes == true
	s.bypass_covers_freezing_months == true
}

excused contains {"subject": s.subject, "reason": "no month freezes here"} if {
	some s in input.cold_season
	s.any_month_freezes == false
}
