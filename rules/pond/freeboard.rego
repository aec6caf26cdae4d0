# METADATA
# title: The rim of a pond stands well above its water.
# description: >-
#   Wind and rain push water up, banks settle, and the way out clogs with leaves. Freeboard keeps that from going
#   over the rim, where it cuts the bank away.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: freeboard, bound: at least, limit: pond_freeboard}
#   remedy: >-
#     Raise the rim of {subject} by {short}, or set its water level lower by as much.
#   caution: open_water
#   sources:
#     - title: USDA NRCS Agriculture Handbook 590, Ponds (1997)
#       place: water that the wind can blow over for no more than 660 ft
#       standing: from memory
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: freeboard
#       standing: from memory
package greysill.pond.freeboard

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.freeboard >= data.limits.pond_freeboard.value
}
