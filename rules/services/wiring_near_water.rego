# METADATA
# title: Line-voltage wiring in the ground keeps away from open water.
# description: >-
#   A cable with a nick lets current into wet ground, and nobody in the water can feel where it comes from before it is
#   too late.
# custom:
#   subjects: digs
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: wiring_from_open_water, where: {service_kind: line voltage}}
#   remedy: >-
#     Move {part} {short} farther from {service}, or have a licensed electrician say what the electrical code in force
#     asks of {service} there.
#   caution: electricity
#   sources:
#     - title: National Electrical Code (NFPA 70), 2014 and before, as a trade journal answers on it
#       place: "680.10"
#       standing: published
#     - title: National Electrical Code (NFPA 70), on natural and artificial bodies of water
#       place: article 682
#       standing: published
package greysill.services.wiring_near_water

import rego.v2

proved contains d.subject if {
	some d in input.digs
	d.service_kind == "line voltage"
	d.open_water == true
	d.distance >= data.limits.wiring_from_open_water.value
}

excused contains {"subject": d.subject, "reason": "the service carries no line voltage"} if {
	some d in input.digs
	d.service_kind in {"low voltage", "gas", "water", "telecom", "sewer", "irrigation"}
}

excused contains {"subject": d.subject, "reason": "the part is no open water"} if {
	some d in input.digs
	d.service_kind == "line voltage"
	d.open_water == false
}
