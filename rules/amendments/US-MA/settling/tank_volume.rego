# METADATA
# title: A tank or settling basin holds 1,000 gallons.
# description: >-
#   Massachusetts wants greywater to settle as sewage does before it comes to the soil, in a tank of this size.
#   A filter that the department has approved may take its place, which the drawing does not tell; so this is a
#   warning.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: volume, bound: at least, limit: tank_volume}
#   remedy: >-
#     Enlarge {subject} by {short}, or put an approved filter in its place and write the approval on the plan.
#   caution: pathogens
#   sources:
#     - title: Massachusetts regulations 310 CMR 15.262, as the Department of Environmental Protection restates it
#       standing: published
package greysill.settling.tank_volume

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.volume >= data.limits.tank_volume.value
}
