# METADATA
# title: No tank, basin or pond keeps greywater in store.
# description: >-
#   Greywater that is kept turns foul within a day and smells. A diversion device lets it straight out into the soil,
#   and what the soil cannot take goes to the sewer. A surge tank or settling basin keeps some back, if only for a
#   while.
# custom:
#   subjects: parts
#   level: warn
#   measures:
#     - {field: kind}
#   remedy: >-
#     Leave {subject} out and let the water run straight on, or ask the council to approve a system that keeps
#     greywater.
#   caution: pathogens
#   sources:
#     - title: The Hills Shire Council, page on reuse of greywater, for New South Wales
#       place: diversion device, no storage
#       standing: published
package greysill.exposure.no_storage

import rego.v2

proved contains p.subject if {
	some p in input.parts
	p.kind in {
		"diverter", "drain pipe", "filter", "planted gravel bed", "mulch basin", "infiltration trench",
		"spillway", "overflow pipe", "storm inflow", "sewer connection", "septic connection",
	}
}
