# METADATA
# title: Buried wires lie as deep as their kind of wiring asks.
# description: >-
#   The electrical code sets how deep a wire lies by what protects it from a spade. A shallower one is cut by the first
#   basin or trench that is dug across it.
# custom:
#   subjects: services
#   level: warn
#   measures:
#     - {field: cover, bound: at least, limit: wiring_cover_direct_burial, where: {wiring: direct burial cable}}
#     - {field: cover, bound: at least, limit: wiring_cover_plastic_conduit, where: {wiring: PVC conduit}}
#     - {field: cover, bound: at least, limit: wiring_cover_metal_conduit, where: {wiring: metal conduit}}
#     - {field: cover, bound: at least, limit: wiring_cover_fault_protected, where: {wiring: GFCI-protected cable}}
#     - {field: cover, bound: at least, limit: wiring_cover_low_voltage, where: {wiring: low voltage}}
#   remedy: >-
#     Keep every dig clear of {subject}, and have a licensed electrician lay it {short} deeper or protect it otherwise.
#   caution: electricity
#   sources:
#     - title: National Electrical Code (NFPA 70), as municipal handouts restate it
#       place: Table 300.5
#       standing: published
package greysill.services.wiring_cover

import rego.v2

proved contains s.subject if {
	some s in input.services
	s.wiring == "direct burial cable"
	s.cover >= data.limits.wiring_cover_direct_burial.value
}

proved contains s.subject if {
	some s in input.services
	s.wiring == "PVC conduit"
	s.cover >= data.limits.wiring_cover_plastic_conduit.value
}

proved contains s.subject if {
	some s in input.services
	s.wiring == "metal conduit"
	s.cover >= data.limits.wiring_cover_metal_conduit.value
}

proved contains s.subject if {
	some s in input.services
	s.wiring == "GFCI-protected cable"
	s.cover >= data.limits.wiring_cover_fault_protected.value
}

proved contains s.subject if {
	some s in input.services
	s.wiring == "low voltage"
	s.cover >= data.limits.wiring_cover_low_voltage.value
}

excused contains {"subject": s.subject, "reason": "it is no wire"} if {
	some s in input.services
	s.wiring == "none"
}
