# METADATA
# title: No run of pipe is too long to be cleaned.
# description: >-
#   A stoppage farther from an opening than a drain rod reaches has to be dug up. Pipes that lead into one another
#   without a cleanout are one run.
# custom:
#   subjects: cleanouts
#   level: warn
#   measures:
#     - {field: longest_run, bound: at most, limit: cleanout_spacing}
#   remedy: >-
#     Draw a cleanout, reachable from above, on {subject} so that no run is longer than {limit}.
#   caution: pathogens
#   sources:
#     - title: Redwood City, California, amendment to the Uniform Plumbing Code
#       place: section 406
#       standing: published
#     - title: Chicago Plumbing Code 18-29-708.3, for 50 ft on pipes up to 4 in
#       standing: published
package greysill.drains.cleanout_spacing

import rego.v2

proved contains c.subject if {
	some c in input.cleanouts
	c.longest_run <= data.limits.cleanout_spacing.value
}
