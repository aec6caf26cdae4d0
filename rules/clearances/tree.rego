# METADATA
# title: Beds, trenches, basins and ponds keep their distance from trees.
# description: >-
#   Roots go where the water is. They pierce a liner, fill gravel and lift pipes, and the tree itself suffers when its
#   roots are cut or stand in water. A mulch basin is another matter: it is there to water trees.
# custom:
#   subjects: clearances.tree
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: tree_from_field}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}. Where there is no room, a root barrier between the two is the
#     usual way out; ask the authority for a variance then.
#   sources:
#     - title: Nevada Administrative Code 444.792
#       place: distance of a disposal field to trees
#       standing: published
package greysill.clearances.tree

import rego.v2

proved contains c.subject if {
	some c in input.clearances.tree
	c.works == "field"
	c.part_kind in {"planted gravel bed", "infiltration trench", "settling basin", "pond"}
	c.distance >= data.limits.tree_from_field.value
}

excused contains {"subject": c.subject, "reason": "a mulch basin is there to water trees"} if {
	some c in input.clearances.tree
	c.works == "field"
	c.part_kind == "mulch basin"
}

excused contains {"subject": c.subject, "reason": "it lets no water into the ground"} if {
	some c in input.clearances.tree
	c.works in {"tank", "pipe", "fitting"}
}
