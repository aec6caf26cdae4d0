# METADATA
# title: A settling basin or surge tank can be reached and emptied without digging.
# description: >-
#   What cannot be reached is not cleaned. Whoever has to dig down to a lid, or to walk over the bed to get
#   there, puts it off until the gravel behind it has clogged.
# custom:
#   subjects: settling
#   level: warn
#   measures:
#     - {field: accessible}
#   remedy: >-
#     Bring the lid of {subject} up to the finished ground, where it can be opened and pumped out without
#     treading on what follows, and secure it against children.
#   caution: open_water
#   sources:
#     - title: New Mexico Administrative Code 20.7.3.809
#       place: a tank has a tamper-resistant lid to grade
#       standing: published
#     - title: Utah Administrative Code R317-401-7 (2024)
#       place: 7.1(d), access within 6 in of grade
#       standing: published
package greysill.settling.reachable

import rego.v2

proved contains s.subject if {
	some s in input.settling
	s.accessible == true
}
