# METADATA
# title: The system rests outside the growing season.
# description: >-
#   Plants that do not grow take up no water, and greywater that nothing takes up comes to the surface or sinks
#   to the groundwater. So a plan in Washington says from when to when all water goes to the sewer or septic
#   tank, also where nothing freezes. The drawing does not tell when the growing season begins and ends; this
#   much is certain, that it has no month that freezes.
# custom:
#   subjects: cold_season
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: has_bypass_season}
#     - {field: bypass_season}
#     - {field: freezing_months}
#     - {field: months_left_open}
#   remedy: >-
#     Draw a bypass season that takes in every month outside the growing season. As drawn it is {bypass_season};
#     the months that freeze are {freezing_months}.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-274-011 (2011)
#       place: (1)(i)
#       standing: published
package greysill.flow.growing_season

import rego.v2

proved contains s.subject if {
	some s in input.cold_season
	s.has_bypass_season == true
	s.bypass_covers_freezing_months == true
}
