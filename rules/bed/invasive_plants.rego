# METADATA
# title: Neither common reed nor reed canary grass is planted where it is not native.
# description: >-
#   Common reed and reed canary grass spread from a bed by root and seed along every ditch and shore and push out what
#   grew there. In Europe both are native, and reed is the usual plant of such beds. Other plants spread too, and each
#   state has a list of its own: this rule knows these two.
# custom:
#   subjects: roots
#   level: warn
#   measures:
#     - {field: plant}
#     - {field: species}
#     - {field: country}
#   remedy: >-
#     Plant something native in place of {species}: bulrush, rushes, sedges, native cattail or iris of the place. Ask
#     the nursery for the native kind by its botanical name, and the local weed authority where in doubt.
#   sources:
#     - title: NRCS and EPA, Handbook of Constructed Wetlands (Davis, 1995)
#       place: table of emergent plants, of common reed
#       standing: published
#     - title: Elgin County, Ontario, and Westchester County, New York, advice on Phragmites
#       standing: published
#     - title: Reed canary grass is invasive in North America
#       standing: from memory
#     - title: Common reed and reed canary grass are native in Europe
#       standing: from memory
package greysill.bed.invasive_plants

import rego.v2

proved contains r.subject if {
	some r in input.roots
	r.plant == "another plant"
}

proved contains r.subject if {
	some r in input.roots
	r.plant in {"common reed", "reed canary grass"}
	r.country in {
		"AT", "BE", "CH", "CZ", "DE", "DK", "ES", "FI", "FR", "GB", "HU", "IE", "IT", "LU", "NL", "NO", "PL", "PT", "SE", "SI",
	}
}
