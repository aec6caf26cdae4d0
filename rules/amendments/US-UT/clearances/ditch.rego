# METADATA
# title: Greywater works keep the same distance from a ditch as from a stream.
# description: >-
#   A ditch hands on what seeps into it to every field and garden along it. Utah names ditches beside streams
#   and lakes; other drains are left to the base rule.
# custom:
#   subjects: clearances.drainage
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: utah_ditch_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: utah_ditch_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or agree on less with the regulator where the ditch is lined or
#     lies uphill.
#   caution: pathogens
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3, streams, ditches and lakes
#       standing: published
package greysill.clearances.ditch

import rego.v2

proved contains c.subject if {
	some c in input.clearances.drainage
	c.feature_kind == "ditch"
	c.works == "field"
	c.distance >= data.limits.utah_ditch_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.drainage
	c.feature_kind == "ditch"
	c.works == "tank"
	c.distance >= data.limits.utah_ditch_from_tank.value
}

excused contains {"subject": c.subject, "reason": "Utah's table names ditches, no other drains"} if {
	some c in input.clearances.drainage
	c.feature_kind in {"neighbour's drain", "storm drain"}
	c.works in {"field", "tank"}
}

excused contains {"subject": c.subject, "reason": "a watertight pipe or fitting is not held to this distance"} if {
	some c in input.clearances.drainage
	c.works in {"pipe", "fitting"}
}
