# METADATA
# title: No run of pipe bends too much to be cleaned.
# description: >-
#   A drain rod goes round one or two bends. Behind the next one it cannot be turned any more. Pipes that lead into one
#   another without a cleanout are one run.
# custom:
#   subjects: cleanouts
#   level: warn
#   measures:
#     - {field: bends_without_cleanout, bound: at most, limit: cleanout_bends}
#   remedy: >-
#     Draw a cleanout on {subject} in the run {bends_without_cleanout_at}, which bends by {bends_without_cleanout}, or lay
#     it straighter.
#   caution: pathogens
#   sources:
#     - title: Uniform Plumbing Code
#       place: sections 707.4 and 719.1
#       standing: from memory
#     - title: Chicago Plumbing Code 18-29-708.3, for one at each bend of more than 45°
#       standing: published
package greysill.drains.cleanout_bends

import rego.v2

proved contains c.subject if {
	some c in input.cleanouts
	c.bends_without_cleanout <= data.limits.cleanout_bends.value
}
