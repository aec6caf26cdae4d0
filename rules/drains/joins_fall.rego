# METADATA
# title: Water never has to rise from one part to the next.
# description: >-
#   A tank set too high or an inlet drilled too high dams the pipe before it up. The water stands in the pipe, its solids
#   settle, and the next flood comes back into the house.
# custom:
#   subjects: joins
#   level: fail
#   measures:
#     - {field: drop, bound: at least, limit: join_drop}
#   remedy: >-
#     Lower {next} by {short} where {part} leads into it, or raise the end of {part} by as much if its fall allows.
#   caution: digging
#   sources:
#     - title: Chicago Plumbing Code 18-29-704.2
#       place: slope never reversed in the direction of flow
#       standing: published
package greysill.drains.joins_fall

import rego.v2

proved contains j.subject if {
	some j in input.joins
	j.drop >= data.limits.join_drop.value
}
