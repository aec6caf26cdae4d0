# METADATA
# title: Greywater is let in well away from a house with a cellar.
# description: >-
#   A cellar wall stands below the level to which greywater soaks, and it cracks and leaks long before anybody
#   sees it. Where the house has no cellar the distance from its slab is enough. The drawing says whether the
#   house has one, and of several buildings not which: of one without, say so in a variance.
# custom:
#   subjects: clearances.building
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: cellar_from_field, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}.
#   caution: digging
#   sources:
#     - title: Massachusetts regulations 310 CMR 15.211, as the town of Hingham tabulates it
#       place: cellar wall
#       standing: published
package greysill.clearances.cellar

import rego.v2

proved contains c.subject if {
	some c in input.clearances.building
	c.works == "field"
	c.distance >= data.limits.cellar_from_field.value
}

excused contains {"subject": c.subject, "reason": "the house has no cellar"} if {
	some c in input.clearances.building
	some s in input.system
	c.works == "field"
	c.distance < data.limits.cellar_from_field.value
	s.basement == false
}

excused contains {"subject": c.subject, "reason": "it lets no water into the ground"} if {
	some c in input.clearances.building
	c.works in {"tank", "pipe", "fitting"}
}
