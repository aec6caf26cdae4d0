# METADATA
# title: A tank or settling basin holds three days of greywater.
# description: >-
#   South Dakota treats greywater as it does sewage: what sinks and what floats stays behind in a tank built
#   like a septic tank, for three days, and only then does the water go into the soil. Where there are several
#   in a row, one of them has to hold it.
# custom:
#   subjects: settling
#   level: fail
#   measures:
#     - {field: volume_per_occupant, bound: at least, limit: tank_room_per_person}
#     - {field: volume}
#   remedy: >-
#     Enlarge {subject}: it holds {volume}, which is {volume_per_occupant} for each person, and {limit} is
#     wanted.
#   caution: pathogens
#   sources:
#     - title: Administrative Rules of South Dakota 74:53:01:38
#       place: (2) and (3)
#       standing: published
package greysill.settling.tank_room

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.volume_per_occupant >= data.limits.tank_room_per_person.value
}
