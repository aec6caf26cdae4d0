# METADATA
# title: Greywater works keep their distance from every building.
# description: >-
#   Water let into the ground beside a wall finds the footing, the cellar or the crawl space, and a pit dug there takes
#   the support from under the footing.
# custom:
#   subjects: clearances.building
#   level: fail
#   not_shown: fail
#   measures:
#     - {field: distance, bound: at least, limit: building_from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: building_from_tank, where: {works: tank}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}. A tank that stands above the ground may be allowed nearer: ask
#     the authority, and name its consent as a variance.
#   caution: digging
#   sources:
#     - title: Utah Administrative Code R317-401-5 (2024)
#       place: Table 3
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: Table G-1, which asks 8 ft of a field without a water barrier
#       standing: published
package greysill.clearances.building

import rego.v2

proved contains c.subject if {
	some c in input.clearances.building
	c.works == "field"
	c.distance >= data.limits.building_from_field.value
}

proved contains c.subject if {
	some c in input.clearances.building
	c.works == "tank"
	c.distance >= data.limits.building_from_tank.value
}

excused contains {"subject": c.subject, "reason": "pipes and fittings start at the building"} if {
	some c in input.clearances.building
	c.works in {"pipe", "fitting"}
}
