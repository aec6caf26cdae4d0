# METADATA
# title: The plan says who runs the system.
# description: >-
#   A system that belongs to nobody is looked after by nobody.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: operator}
#   remedy: >-
#     Name the operator by role: the owner, a tenant, a firm under contract.
#   sources:
#     - title: Somebody answers for a running system
#       standing: common practice
package greysill.records.operator

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.operator != ""
}
