# METADATA
# title: What is dug stays out of the strip beside a buried service where only hands may dig.
# description: >-
#   Marks on the ground are good to a foot or two. Inside that strip a machine or a spade driven in hard finds the line
#   before anybody sees it.
# custom:
#   subjects: digs
#   level: warn
#   measures:
#     - {field: distance, bound: at least, limit: tolerance_zone}
#   remedy: >-
#     Move {part} {short} farther from {service}, or dig by hand or with a vacuum within {limit} of its marks and write
#     that on the plan.
#   caution: digging
#   sources:
#     - title: Missouri Revised Statutes 319.015
#       place: approximate location, 2 ft each side
#       standing: published
#     - title: Ohio Revised Code 3781.25
#       place: (E), 18 in
#       standing: published
package greysill.services.beside_digs

import rego.v2

proved contains d.subject if {
	some d in input.digs
	d.meets == false
	d.distance >= data.limits.tolerance_zone.value
}

excused contains {
	"subject": d.subject,
	"reason": "where a service meets a dig or a pipe, the height between them is judged",
} if {
	some d in input.digs
	d.meets == true
}
