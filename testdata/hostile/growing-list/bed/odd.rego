# METADATA
# title: Every bed is as it should be.
# description: >-
#   So that something is said.
# custom:
#   subjects: beds
#   level: warn
#   measures:
#     - {field: area}
#   remedy: >-
#     Mend {subject}.
#   sources:
#     - title: Nothing
#       standing: common practice
package greysill.bed.odd

import rego.v2

proved contains b.subject if {
	some b in input.beds
	a0 := [b.area, 1]
	c0 := [b.area, 1]
	a1 := [a0, a0]
	c1 := [c0, c0]
	a2 := [a1, a1]
	c2 := [c1, c1]
	a3 := [a2, a2]
	c3 := [c2, c2]
	a4 := [a3, a3]
	c4 := [c3, c3]
	a5 := [a4, a4]
	c5 := [c4, c4]
	a6 := [a5, a5]
	c6 := [c5, c5]
	a7 := [a6, a6]
	c7 := [c6, c6]
	a8 := [a7, a7]
	c8 := [c7, c7]
	a9 := [a8, a8]
	c9 := [c8, c8]
	a10 := [a9, a9]
	c10 := [c9, c9]
	a11 := [a10, a10]
	c11 := [c10, c10]
	a12 := [a11, a11]
	c12 := [c11, c11]
	a13 := [a12, a12]
	c13 := [c12, c12]
	a14 := [a13, a13]
	c14 := [c13, c13]
	a15 := [a14, a14]
	c15 := [c14, c14]
	a16 := [a15, a15]
	c16 := [c15, c15]
	a17 := [a16, a16]
	c17 := [c16, c16]
	a18 := [a17, a17]
	c18 := [c17, c17]
	a19 := [a18, a18]
	c19 := [c18, c18]
	a20 := [a19, a19]
	c20 := [c19, c19]
	a21 := [a20, a20]
	c21 := [c20, c20]
	a22 := [a21, a21]
	c22 := [c21, c21]
	a23 := [a22, a22]
	c23 := [c22, c22]
	a24 := [a23, a23]
	c24 := [c23, c23]
	a25 := [a24, a24]
	c25 := [c24, c24]
	a26 := [a25, a25]
	c26 := [c25, c25]
	a27 := [a26, a26]
	c27 := [c26, c26]
	a28 := [a27, a27]
	c28 := [c27, c27]
	a29 := [a28, a28]
	c29 := [c28, c28]
	a30 := [a29, a29]
	c30 := [c29, c29]
	a31 := [a30, a30]
	c31 := [c30, c30]
	a32 := [a31, a31]
	c32 := [c31, c31]
	a33 := [a32, a32]
	c33 := [c32, c32]
	a34 := [a33, a33]
	c34 := [c33, c33]
	a35 := [a34, a34]
	c35 := [c34, c34]
	a36 := [a35, a35]
	c36 := [c35, c35]
	a37 := [a36, a36]
	c37 := [c36, c36]
	a38 := [a37, a37]
	c38 := [c37, c37]
	a39 := [a38, a38]
	c39 := [c38, c38]
	a40 := [a39, a39]
	c40 := [c39, c39]
	a40 == c40
}
