# METADATA
# title: The deepest-rooting plants reach down through the mean depth of the gravel.
# description: >-
#   Roots bring air into the gravel and give the germs that clean the water a hold. Below them the water takes the
#   easy way and is cleaned less. Deep beds with shallow roots are built, which is why this is a warning.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: root_reach, bound: at least, limit: root_reach}
#     - {field: root_depth}
#     - {field: mean_depth}
#   remedy: >-
#     Make the gravel of {subject} no deeper than the roots reach, {root_depth}, or plant what roots deeper, such as
#     bulrush. As drawn, the gravel is {mean_depth} deep on the mean.
#   sources:
#     - title: Crites, Middlebrooks and Reed, Natural Wastewater Treatment Systems (2006)
#       place: chapter 7, plants
#       standing: published
#     - title: U.S. EPA, EPA/625/1-88/022 (1988), design manual
#       place: chapter 3
#       standing: from memory
package greysill.bed.roots

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.root_reach >= data.limits.root_reach.value
}
