# METADATA
# title: A task is done at every mulch basin at least as often as its mulch has to be renewed.
# description: >-
#   Wood chips turn to soil within a few years. Then nothing covers the greywater and nothing holds it. What is done at
#   each visit stands in the words of the task, which nobody but a reader can judge.
# custom:
#   subjects: upkeep
#   level: warn
#   measures:
#     - {field: shortest_interval, bound: at most, limit: mulch_renewed, where: {kind: mulch basin}}
#   remedy: >-
#     Write a task that renews the mulch of {subject} at least every {limit}, or sooner where it has sunk.
#   caution: pathogens
#   sources:
#     - title: City of Petaluma, California, programme for gardens fed by washers
#       place: renewal of mulch, 3 to 5 years
#       standing: published
package greysill.records.mulch_renewed

import rego.v2

proved contains u.subject if {
	some u in input.upkeep
	u.kind == "mulch basin"
	u.timed == true
	u.shortest_interval <= data.limits.mulch_renewed.value
}

excused contains {"subject": u.subject, "reason": "it is no mulch basin"} if {
	some u in input.upkeep
	u.kind in {"diverter", "filter", "surge tank", "planted gravel bed", "settling basin", "pond"}
}

excused contains {"subject": u.subject, "reason": "that no task says how often is judged by records/upkeep"} if {
	some u in input.upkeep
	u.kind == "mulch basin"
	u.timed == false
}
