# METADATA
# title: What lets greywater into the ground keeps the greater distance from a building downhill of it.
# description: >-
#   Water in the ground runs downhill, and comes to a wall below it far sooner than to one above. Whether a building
#   stands below or above, the drawing's levels show and the council looks.
# custom:
#   subjects: clearances.building
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: victoria_building_downhill, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, unless {feature} stands uphill of it.
#   caution: digging
#   sources:
#     - title: EPA Victoria, code of practice on onsite wastewater, setback table as the Shire of Pyrenees copies it
#       place: column of primary effluent, field uphill of the building
#       standing: published
package greysill.clearances.building_downhill

import rego.v2

proved contains c.subject if {
	some c in input.clearances.building
	c.works == "field"
	c.distance >= data.limits.victoria_building_downhill.value
}

excused contains {"subject": c.subject, "reason": "the distance is that of a field"} if {
	some c in input.clearances.building
	c.works in {"tank", "pipe", "fitting"}
}
