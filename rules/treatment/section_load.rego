# METADATA
# title: The inlet end of a planted gravel bed is wide and deep enough for the matter that comes in.
# description: >-
#   All that is coarse and most of what is dissolved is caught where the water enters. The smaller the cross-section
#   there, the sooner it clogs and the water comes up. BOD5 is the oxygen that germs use up in five days on what the
#   water carries.
# custom:
#   subjects: bed_flow
#   level: warn
#   measures:
#     - {field: greatest_section_load, bound: at most, limit: section_load_greatest}
#   remedy: >-
#     Let the water into {subject} on a longer side: the cross-section at the inlet, {width} wide with {water_depth}
#     of water, takes {greatest_section_load} of BOD5, where at most {limit} is wanted.
#   sources:
#     - title: Wallace and Knight, Small-scale constructed wetland treatment systems (2006)
#       standing: from memory
#     - title: Steiner and Watson, guideline of the Tennessee Valley Authority, TVA/WM-93/10 (1993)
#       standing: from memory
package greysill.treatment.section_load

import rego.v2

proved contains b.subject if {
	some b in input.bed_flow
	b.greatest_section_load <= data.limits.section_load_greatest.value
}
