# METADATA
# title: Buried gas lines lie deep enough to dig beside.
# description: >-
#   A gas line near the surface is the first thing that a spade finds, and gas that leaks into the ground comes up inside
#   the house.
# custom:
#   subjects: services
#   level: warn
#   measures:
#     - {field: cover, bound: at least, limit: gas_cover, where: {kind: gas}}
#   remedy: >-
#     Keep every dig clear of {subject}, which lies {short} less deep than the code asks, and tell the gas company or a
#     licensed gas fitter before any work near it.
#   caution: gas
#   sources:
#     - title: International Residential Code 2021, as a trade page restates it
#       place: G2415.12
#       standing: published
package greysill.services.gas_cover

import rego.v2

proved contains s.subject if {
	some s in input.services
	s.kind == "gas"
	s.cover >= data.limits.gas_cover.value
}

excused contains {"subject": s.subject, "reason": "it carries no gas"} if {
	some s in input.services
	s.kind in {"line voltage", "low voltage", "water", "telecom", "sewer", "irrigation"}
}
