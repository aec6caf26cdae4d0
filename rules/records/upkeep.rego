# METADATA
# title: Every part that needs upkeep has a task that says how often.
# description: >-
#   Filters blind within weeks, settling basins fill within years, and a diverter that is never turned seizes. What is
#   not written down is done until the house is sold.
# custom:
#   subjects: upkeep
#   level: warn
#   measures:
#     - {field: timed}
#     - {field: tasks}
#   remedy: >-
#     Write a task for {subject}, a {kind}, that says what is done there, how often and by whom.
#   caution: pathogens
#   sources:
#     - title: California Plumbing Code 1601.6, as a digest restates it
#       place: a manual of operation and maintenance stays on the site
#       standing: published
package greysill.records.upkeep

import rego.v2

proved contains u.subject if {
	some u in input.upkeep
	u.timed == true
}
