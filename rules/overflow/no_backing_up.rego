# METADATA
# title: Water does not back up from one part into the part before it.
# description: >-
#   Where the water of a part stands over the outlet of the part before it, that one cannot drain. A bed then
#   stands at the level of the pond below it instead of its own outlet, water shows between the stones, and
#   nothing can be emptied for repair.
# custom:
#   subjects: drops
#   level: fail
#   measures:
#     - {field: drowned_dry}
#     - {field: dry_drop}
#   remedy: >-
#     Lower the water of {downstream}, or raise the outlet of {upstream}, until the water falls freely from the
#     one into the other.
#   caution: pathogens
#   sources:
#     - title: Every part drains freely into the next
#       standing: common practice
package greysill.overflow.no_backing_up

import rego.v2

proved contains p.subject if {
	some p in input.drops
	p.drowned_dry == false
}
