# METADATA
# title: What lets greywater into the ground keeps its distance from gas pipes.
# description: >-
#   Wet ground rusts a gas pipe, and the trench of a pipe leads water along it to the house. A leak there brings the
#   gas the same way.
# custom:
#   subjects: clearances.buried_line
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: victoria_gas_from_field, where: {works: field}}
#   remedy: >-
#     Move {part} at least {short} farther from {feature}, or have the gas company lay {feature} elsewhere.
#   caution: gas
#   sources:
#     - title: EPA Victoria, code of practice on onsite wastewater, setback table as the Shire of Pyrenees copies it
#       place: column of primary effluent, gas pipe
#       standing: published
package greysill.clearances.gas_pipe

import rego.v2

proved contains c.subject if {
	some c in input.clearances.buried_line
	c.works == "field"
	c.feature_kind == "gas"
	c.distance >= data.limits.victoria_gas_from_field.value
}

excused contains {"subject": c.subject, "reason": "the distance is that of a field"} if {
	some c in input.clearances.buried_line
	c.works in {"tank", "pipe", "fitting"}
}

excused contains {"subject": c.subject, "reason": "it is no gas pipe"} if {
	some c in input.clearances.buried_line
	c.works == "field"
	c.feature_kind in {"line voltage", "low voltage", "water", "telecom", "sewer", "irrigation"}
}
