# METADATA
# title: The floor of a planted gravel bed is level.
# description: >-
#   On a floor that dips, the water runs along the low side and leaves the rest of the gravel without work, and the bed
#   cannot be emptied there. It is a warning because some manuals slope the floor a little on purpose.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: floor_range, bound: at most, limit: floor_range}
#   remedy: >-
#     Draw and dig the floor of {subject} level to within {limit}: as drawn, its highest and lowest points differ by
#     {floor_range}. Where the slope is meant, name the manual that it follows.
#   caution: digging
#   sources:
#     - title: Iowa Administrative Code 567-69.15 (2024)
#       place: bottom level within 1/2 in either way
#       standing: published
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(vi)
#       standing: published
#     - title: U.S. EPA, manual on constructed wetlands (2000)
#       place: floors that slope by 0.5 to 1 %
#       standing: from memory
package greysill.bed.floor_level

import rego.v2

proved contains b.subject if {
	some b in input.beds
	b.floor_range <= data.limits.floor_range.value
}
