# METADATA
# title: No water that soiled nappies were washed in enters the greywater train.
# description: >-
#   It is toilet waste in all but name: it carries the same germs, in the same numbers. A washer that also does nappies
#   can be turned to the sewer for those loads only if somebody remembers to, every time.
# custom:
#   subjects: inflows
#   level: fail
#   measures:
#     - {field: soiled_nappies}
#     - {field: enters_train}
#     - {field: route}
#   remedy: >-
#     Lead {subject} straight to the sewer or septic connection, or wash soiled nappies in a machine that drains there.
#   caution: pathogens
#   sources:
#     - title: Washington Administrative Code 246-274-011
#       place: (1)(d) to (f)
#       standing: published
#     - title: Los Angeles County Code, Title 28, Appendix G (1995)
#       place: G-13
#       standing: published
#     - title: Texas Administrative Code, title 30, section 210.82
#       place: (a)(4)
#       standing: published
#     - title: Montana Code Annotated 15-24-3201
#       place: definition of gray water
#       standing: published
package greysill.sources.soiled_nappies

import rego.v2

proved contains i.subject if {
	some i in input.inflows
	i.soiled_nappies == false
}

proved contains i.subject if {
	some i in input.inflows
	i.enters_train == false
}
