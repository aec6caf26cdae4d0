# METADATA
# title: What lets greywater into the ground keeps away from lakes and dams that drinking water is drawn from.
# description: >-
#   What reaches a reservoir is drunk by everybody below it. The drawing does not say whether a lake or pond is one,
#   so each within the distance is to be asked about.
# custom:
#   subjects: clearances.surface_water
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: victoria_drinking_lake, where: {works: field}}
#   remedy: >-
#     Ask the council or the water company whether drinking water is drawn from {feature}. If it is, move {part} at
#     least {short} farther from it; if not, the shorter distance from open water is enough.
#   caution: drinking_water
#   sources:
#     - title: EPA Victoria, code of practice on onsite wastewater, setback table as the Shire of Pyrenees copies it
#       place: column of primary effluent, dam or lake for drinking water
#       standing: published
package greysill.clearances.drinking_lake

import rego.v2

proved contains c.subject if {
	some c in input.clearances.surface_water
	c.works == "field"
	c.feature_kind in {"lake", "pond"}
	c.distance >= data.limits.victoria_drinking_lake.value
}

excused contains {"subject": c.subject, "reason": "the distance is that of a field"} if {
	some c in input.clearances.surface_water
	c.works in {"tank", "pipe", "fitting"}
}

excused contains {"subject": c.subject, "reason": "it is no lake or pond"} if {
	some c in input.clearances.surface_water
	c.works == "field"
	c.feature_kind in {"stream", "wetland"}
}
