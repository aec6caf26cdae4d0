# METADATA
# title: A pipe under a driveway runs in a casing that bears the wheels.
# description: >-
#   Wheels press a shallow plastic pipe flat or out of its fall, and it cannot be mended without digging up the drive.
# custom:
#   subjects: pipes
#   level: warn
#   measures:
#     - {field: under_driveway}
#   remedy: >-
#     Lead {subject} round the driveway, or draw it in a casing (cased) that takes the load, as whoever builds the drive
#     asks.
#   caution: digging
#   sources:
#     - title: Pipes under wheels are cased or laid deep
#       standing: common practice
package greysill.drains.under_driveway

import rego.v2

proved contains p.subject if {
	some p in input.pipes
	p.under_driveway == false
}

proved contains p.subject if {
	some p in input.pipes
	p.under_driveway == true
	p.cased == true
}
