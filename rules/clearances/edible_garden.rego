# METADATA
# title: No greywater is let in under an edible garden.
# description: >-
#   Its germs live for weeks in soil and splash onto what is eaten raw. Most codes keep greywater off vegetables
#   altogether; Colorado and Washington let it reach edible plants where it cannot touch what is eaten, and several
#   states allow fruit and nut trees.
# custom:
#   subjects: clearances.edible_garden
#   level: fail
#   measures:
#     - {field: touches}
#     - {field: distance}
#   remedy: >-
#     Move {part} out of {feature}, or plant there what nobody eats; draw fruit and nut trees as trees.
#   caution: pathogens
#   sources:
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: G-13, no vegetable gardens
#       standing: published
#     - title: Utah Administrative Code R317-401-3 (2024)
#       place: 3.2(a)
#       standing: published
#     - title: Montana Administrative Rules 17.36.319
#       place: (4)(c), fruit and nut trees only
#       standing: published
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(b), where the edible part is not touched
#       standing: published
package greysill.clearances.edible_garden

import rego.v2

proved contains c.subject if {
	some c in input.clearances.edible_garden
	c.works == "field"
	c.touches == false
}

excused contains {"subject": c.subject, "reason": "it lets no water into the ground"} if {
	some c in input.clearances.edible_garden
	c.works in {"tank", "pipe", "fitting"}
}
