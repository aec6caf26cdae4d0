# METADATA
# title: The water of a pond with fish holds little un-ionized ammonia.
# description: >-
#   Ammonia burns the gills of fish. How much of it does depends on the pH and the warmth of the water: what is
#   harmless in cold water kills in warm, green water in August. Greywater brings ammonia all year.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: unionized_ammonia_by_emerson, bound: at most, limit: unionized_ammonia}
#   remedy: >-
#     Have the ammonia and pH of {subject} measured on a warm afternoon. As drawn,
#     {unionized_ammonia_by_emerson} of it is un-ionized, {short} too much: leave the fish out, give them a
#     pond that greywater does not reach, or plant more gravel bed before it.
#   caution: open_water
#   sources:
#     - title: University of Florida IFAS FA-16, Ammonia in Aquatic Systems, as reprinted on a page
#       place: above 0.05 mg/L fish are harmed
#       standing: published
package greysill.pond.ammonia

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.stocked == true
	b.unionized_ammonia_by_emerson <= data.limits.unionized_ammonia.value
}

excused contains {"subject": b.subject, "reason": "no fish are drawn in it"} if {
	some b in input.ponds
	b.stocked == false
}
