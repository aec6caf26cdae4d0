# METADATA
# title: All gravel and stone of a planted gravel bed is washed.
# description: >-
#   Sand and dust between the stones settle at the bottom and the outlet of a new bed and clog it. Nobody can wash
#   gravel that lies in a bed.
# custom:
#   subjects: layers
#   level: fail
#   measures:
#     - {field: washed}
#     - {field: material}
#   remedy: >-
#     Order washed stones for {subject}, now drawn as {material}, and have a sample rinsed in a bucket before the
#     truck unloads.
#   sources:
#     - title: Michigan Administrative Code R 323.2216
#       place: (2)(a)(vii)
#       standing: published
#     - title: Iowa Administrative Code 567-69.15 (2024)
#       standing: published
package greysill.bed.washed

import rego.v2

proved contains l.subject if {
	some l in input.layers
	l.washed == true
}
