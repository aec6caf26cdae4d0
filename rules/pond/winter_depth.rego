# METADATA
# title: Ice does not reach the floor of a pond with fish.
# description: >-
#   Fish die where ice reaches the floor, and under thick ice the little water that is left runs out of oxygen: a pond
#   that passes here by inches is too shallow all the same. Shallow garden ponds freeze through in a hard winter. Ice is no place to stand: no figure here says that it
#   bears anybody.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: least_winter_depth}
#     - {field: greatest_ice}
#     - {field: water_under_ice}
#   remedy: >-
#     Make {subject} deeper, or move the fish for the winter: it is {greatest_depth} deep, and ice can grow to
#     {greatest_ice}.
#   caution: open_water
#   sources:
#     - title: CRREL Technical Note 04-3, as quoted on a page about ice thickness
#       place: windy lake without snow
#       standing: published
#     - title: USDA NRCS in Colorado, Practice Standard 378, an older state text
#       place: fish ponds of 1/4 acre and more, 7 to 10 ft deep over a third of the area
#       standing: published
package greysill.pond.winter_depth

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.stocked == true
	b.water_under_ice == true
}

excused contains {"subject": b.subject, "reason": "no fish are drawn in it"} if {
	some b in input.ponds
	b.stocked == false
}
