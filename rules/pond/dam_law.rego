# METADATA
# title: A pond and its embankment stay below what the law calls a dam.
# description: >-
#   A bank that gives way sends everything behind it downhill at once. Above a certain height or storage,
#   dam-safety law asks for an engineer, a permit and inspections. Below both, the laws that were read leave it
#   alone, though any bank above a house deserves an engineer. A rim that stands over the ground has to be drawn with
#   its embankment.
# custom:
#   subjects: ponds
#   level: warn
#   measures:
#     - {field: embankment_height, bound: at most, limit: dam_height}
#     - {field: volume, bound: at most, limit: dam_storage}
#   remedy: >-
#     Dig {subject} deeper instead of banking it up: the bank stands {embankment_height} over its outside toe.
#     Or ask the state's dam safety office what it wants.
#   caution: open_water
#   sources:
#     - title: United States Code, title 33, section 467
#       place: (3)
#       standing: published
#     - title: Arizona Department of Water Resources, definition of a jurisdictional dam
#       standing: published
package greysill.pond.dam_law

import rego.v2

proved contains b.subject if {
	some b in input.ponds
	b.embankment_height > 0
	b.embankment_height <= data.limits.dam_height.value
	b.volume <= data.limits.dam_storage.value
}

excused contains {"subject": b.subject, "reason": "it is dug in, with no embankment round it"} if {
	some b in input.ponds
	b.embankment_height == 0
}
