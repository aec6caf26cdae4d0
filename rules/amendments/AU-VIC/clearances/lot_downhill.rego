# METADATA
# title: What lets greywater into the ground keeps the greater distance from a lot downhill of it.
# description: >-
#   Water in the ground runs downhill, and comes out at the neighbour's if that is where downhill is. Whether the next
#   lot lies below or above, the drawing's levels show and the council looks.
# custom:
#   subjects: clearances.property_line
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: victoria_lot_downhill, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from the boundary, unless the lot beyond lies uphill of it.
#   caution: pathogens
#   sources:
#     - title: EPA Victoria, code of practice on onsite wastewater, setback table as the Shire of Pyrenees copies it
#       place: column of primary effluent, field uphill of the next lot
#       standing: published
package greysill.clearances.lot_downhill

import rego.v2

proved contains c.subject if {
	some c in input.clearances.property_line
	c.works == "field"
	c.distance >= data.limits.victoria_lot_downhill.value
}

excused contains {"subject": c.subject, "reason": "the distance is that of a field"} if {
	some c in input.clearances.property_line
	c.works in {"tank", "pipe", "fitting"}
}
