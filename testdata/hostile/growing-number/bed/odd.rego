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
	n0 := b.area
	n1 := n0 * n0
	n2 := n1 * n1
	n3 := n2 * n2
	n4 := n3 * n3
	n5 := n4 * n4
	n6 := n5 * n5
	n7 := n6 * n6
	n8 := n7 * n7
	n9 := n8 * n8
	n10 := n9 * n9
	n11 := n10 * n10
	n12 := n11 * n11
	n13 := n12 * n12
	n14 := n13 * n13
	n15 := n14 * n14
	n16 := n15 * n15
	n17 := n16 * n16
	n18 := n17 * n17
	n19 := n18 * n18
	n20 := n19 * n19
	n21 := n20 * n20
	n22 := n21 * n21
	n23 := n22 * n22
	n24 := n23 * n23
	n25 := n24 * n24
	n26 := n25 * n25
	n27 := n26 * n26
	n28 := n27 * n27
	n29 := n28 * n28
	n30 := n29 * n29
	n31 := n30 * n30
	n32 := n31 * n31
	n33 := n32 * n32
	n34 := n33 * n33
	n35 := n34 * n34
	n36 := n35 * n35
	n37 := n36 * n36
	n38 := n37 * n37
	n39 := n38 * n38
	n40 := n39 * n39
	n40 > 0
}
