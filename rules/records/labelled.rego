# METADATA
# title: Tanks, filters and settling basins are labelled as holding greywater.
# description: >-
#   Somebody opens the lid years later, a child or the next owner, and takes it for rainwater.
# custom:
#   subjects: upkeep
#   level: warn
#   measures:
#     - {field: labelled}
#   remedy: >-
#     Put a lasting label on {subject} that says greywater, not fit to drink, and set labelled to true.
#   caution: pathogens
#   sources:
#     - title: Texas Health and Safety Code 341.039
#       place: (c)(4), tanks labelled
#       standing: published
package greysill.records.labelled

import rego.v2

proved contains u.subject if {
	some u in input.upkeep
	u.kind in {"surge tank", "filter", "settling basin"}
	u.labelled == true
}

excused contains {"subject": u.subject, "reason": "it has no lid to label"} if {
	some u in input.upkeep
	u.kind in {"planted gravel bed", "mulch basin", "pond"}
}

excused contains {"subject": u.subject, "reason": "diverters have a rule of their own"} if {
	some u in input.upkeep
	u.kind == "diverter"
}
