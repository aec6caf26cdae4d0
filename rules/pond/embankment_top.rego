# METADATA
# title: The top of a pond's embankment is wide enough to walk and to mow.
# description: >-
#   Muskrats dig, roots rot and feet wear a narrow top down. Width keeps the bank whole when its edges go, and
#   lets somebody look after it safely.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: embankment_top_width, bound: at least, limit: embankment_top_width}
#   remedy: >-
#     Widen the top of the embankment of {subject} by {short}.
#   caution: open_water
#   sources:
#     - title: USDA NRCS Conservation Practice Standard 378, Pond
#       place: total height below 10 ft
#       standing: from memory
#     - title: USDA NRCS Agriculture Handbook 590, Ponds (1997)
#       place: top width
#       standing: from memory
package greysill.pond.embankment_top

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.has_embankment == true
	b.embankment_top_width >= data.limits.embankment_top_width.value
}

excused contains {"subject": b.subject, "reason": "no embankment is drawn"} if {
	some b in input.ponds
	b.has_embankment == false
}
