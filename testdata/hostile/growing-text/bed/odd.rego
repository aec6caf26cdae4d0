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
	t0 := b.subject
	t1 := concat("", [t0, t0])
	t2 := concat("", [t1, t1])
	t3 := concat("", [t2, t2])
	t4 := concat("", [t3, t3])
	t5 := concat("", [t4, t4])
	t6 := concat("", [t5, t5])
	t7 := concat("", [t6, t6])
	t8 := concat("", [t7, t7])
	t9 := concat("", [t8, t8])
	t10 := concat("", [t9, t9])
	t11 := concat("", [t10, t10])
	t12 := concat("", [t11, t11])
	t13 := concat("", [t12, t12])
	t14 := concat("", [t13, t13])
	t15 := concat("", [t14, t14])
	t16 := concat("", [t15, t15])
	t17 := concat("", [t16, t16])
	t18 := concat("", [t17, t17])
	t19 := concat("", [t18, t18])
	t20 := concat("", [t19, t19])
	t21 := concat("", [t20, t20])
	t22 := concat("", [t21, t21])
	t23 := concat("", [t22, t22])
	t24 := concat("", [t23, t23])
	t25 := concat("", [t24, t24])
	t26 := concat("", [t25, t25])
	t27 := concat("", [t26, t26])
	t28 := concat("", [t27, t27])
	t29 := concat("", [t28, t28])
	t30 := concat("", [t29, t29])
	t31 := concat("", [t30, t30])
	t32 := concat("", [t31, t31])
	t33 := concat("", [t32, t32])
	t34 := concat("", [t33, t33])
	t35 := concat("", [t34, t34])
	t36 := concat("", [t35, t35])
	t37 := concat("", [t36, t36])
	t38 := concat("", [t37, t37])
	t39 := concat("", [t38, t38])
	t40 := concat("", [t39, t39])
	t40 != ""
}
