# METADATA
# title: Toilet waste ends in the sewer or a septic tank and stays out of the greywater train.
# description: >-
#   Toilet waste carries far more germs than wash water and solids that no gravel bed or mulch basin takes up. With it
#   the water is sewage, and the whole works falls under sewage law. Let out on the ground or into a stream, it makes
#   people ill.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: water}
#     - {field: enters_train}
#     - {field: ends_in_sewer}
#     - {field: ends}
#     - {field: route}
#   remedy: >-
#     Lead {subject} straight to the sewer or septic connection, with no part of the greywater train on its way.
#   caution: pathogens
#   sources:
#     - title: Arizona Revised Statutes 49-201
#       place: definition of gray water
#       standing: published
#     - title: Minnesota Statutes 115.59
#       place: definition of graywater
#       standing: published
#     - title: ICC code change proposal P152-09/10, International Plumbing Code
#       place: definition of gray water
#       standing: published
package greysill.sources.toilet_waste

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.water in {"greywater", "kitchen waste", "clear water", "brine"}
}

proved contains i.subject if {
	some i in input.inflows
	i.enters_train == false
	i.ends_in_sewer == true
}
