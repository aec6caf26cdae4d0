# METADATA
# title: No public sewer is at hand that the greywater could go to.
# description: >-
#   The general binding rules leave out a new discharge where a public sewer lies within 30 m for each property, and a
#   house that drains to one is that near. The Environment Agency then has to say that the greywater may go into the
#   ground all the same.
# custom:
#   subjects: system
#   level: warn
#   measures:
#     - {field: sewage}
#   remedy: >-
#     Ask the Environment Agency for a permit before anything is dug: the house drains to a {sewage}.
#   sources:
#     - title: General binding rules, England, as a trade page quotes them
#       place: public sewer within 30 m times the number of properties
#       standing: published
package greysill.site.public_sewer

import rego.v2

proved contains s.subject if {
	some s in input.system
	s.sewage == "septic tank"
}
