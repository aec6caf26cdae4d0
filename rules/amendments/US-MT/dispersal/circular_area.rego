# METADATA
# title: A mulch basin or trench has the area that Circular DEQ-4 wants.
# description: >-
#   Montana has gray water let in as the circular has it for the effluent of septic tanks, on several times the
#   area of the tables for greywater. Soil that has taken greywater for years takes less than it did when it was
#   tested.
# custom:
#   subjects: soakage_areas
#   level: warn
#   measures:
#     - {field: counted_to_wanted, bound: at least, limit: circular_area, where: {basis: "Montana, on-site sewage"}}
#     - {field: area_wanted}
#     - {field: basis}
#   remedy: >-
#     Give {part} more area, or lead less water to it: the table wants {area_wanted}.
#   sources:
#     - title: Administrative Rules of Montana 17.36.319 (2009)
#       place: (4)(b)
#       standing: published
#     - title: Montana DEQ, Circular DEQ-4 (a copy of 2015)
#       place: Table 8-1
#       standing: published
package greysill.dispersal.circular_area

import rego.v2

proved contains a.subject if {
	some a in input.soakage_areas
	a.basis == "Montana, on-site sewage"
	a.area_wanted > 0
	a.counted_to_wanted >= data.limits.circular_area.value
}

excused contains {"subject": a.subject, "reason": "the table is another's"} if {
	some a in input.soakage_areas
	a.basis in {
		"Utah, trench", "Utah, mulch basin", "Uniform Plumbing Code, six soils", "Texas, on-site sewage",
		"International Plumbing Code, seepage",
	}
}

excused contains {"subject": a.subject, "reason": "nothing but an overflow reaches it"} if {
	some a in input.soakage_areas
	a.basis == "Montana, on-site sewage"
	a.area_wanted == 0
}
