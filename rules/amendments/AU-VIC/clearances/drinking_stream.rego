# METADATA
# title: What lets greywater into the ground keeps away from streams that drinking water is drawn from.
# description: >-
#   What reaches a stream is drunk by whoever draws from it below. The drawing does not say whether anybody does, so
#   each stream within the distance is to be asked about.
# custom:
#   subjects: clearances.surface_water
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: victoria_drinking_stream, where: {works: field}}
#   remedy: >-
#     Ask the council or the water company whether drinking water is drawn from {feature}. If it is, move {part} at
#     least {short} farther from it; if not, the shorter distance from open water is enough.
#   caution: drinking_water
#   sources:
#     - title: EPA Victoria, code of practice on onsite wastewater, setback table as the Shire of Pyrenees copies it
#       place: column of primary effluent, waterway for drinking water
#       standing: published
package greysill.clearances.drinking_stream

import rego.v2

proved contains c.subject if {
	some c in input.clearances.surface_water
	c.works == "field"
	c.feature_kind == "stream"
	c.distance >= data.limits.victoria_drinking_stream.value
}

excused contains {"subject": c.subject, "reason": "the distance is that of a field"} if {
	some c in input.clearances.surface_water
	c.works in {"tank", "pipe", "fitting"}
}

excused contains {"subject": c.subject, "reason": "it is no stream"} if {
	some c in input.clearances.surface_water
	c.works == "field"
	c.feature_kind in {"lake", "pond", "wetland"}
}
