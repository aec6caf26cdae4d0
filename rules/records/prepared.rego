# METADATA
# title: The plan says who drew it and when.
# description: >-
#   An inspector holds the works against the newest plan. Two plans without a date cannot be told apart, and questions
#   have nowhere to go.
# custom:
#   subjects: plan
#   level: warn
#   measures:
#     - {field: prepared_by}
#     - {field: prepared_on}
#   remedy: >-
#     Give the role of whoever prepared the plan, and the day of this revision.
#   sources:
#     - title: Every sheet of a plan is dated and says who drew it
#       standing: common practice
package greysill.records.prepared

import rego.v2

proved contains p.subject if {
	some p in input.plan
	p.prepared_by != ""
	p.prepared_on != ""
}
