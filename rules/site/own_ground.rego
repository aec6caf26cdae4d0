# METADATA
# title: No two beds, basins, trenches, ponds or tanks are drawn on the same ground.
# description: >-
#   Ground takes up its water once. What is drawn twice, or over another part, counts twice in every area on paper and
#   once in the garden; and two holes cannot be dug in one place.
# custom:
#   subjects: parts
#   level: fail
#   measures:
#     - {field: own_ground}
#     - {field: ground_shared}
#   remedy: >-
#     Draw {subject} on ground of its own, clear of {ground_shared}; or take one of them out, where the same part is drawn
#     twice.
#   sources:
#     - title: A piece of ground is dug and counted once
#       standing: common practice
package greysill.site.own_ground

import rego.v2

proved contains p.subject if {
	some p in input.parts
	p.own_ground == true
}
