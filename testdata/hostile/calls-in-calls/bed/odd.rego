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

f0(x) := x + 1

f1(x) := f0(f0(x))

f2(x) := f1(f1(x))

f3(x) := f2(f2(x))

f4(x) := f3(f3(x))

f5(x) := f4(f4(x))

f6(x) := f5(f5(x))

f7(x) := f6(f6(x))

f8(x) := f7(f7(x))

f9(x) := f8(f8(x))

f10(x) := f9(f9(x))

f11(x) := f10(f10(x))

f12(x) := f11(f11(x))

f13(x) := f12(f12(x))

f14(x) := f13(f13(x))

f15(x) := f14(f14(x))

f16(x) := f15(f15(x))

f17(x) := f16(f16(x))

f18(x) := f17(f17(x))

f19(x) := f18(f18(x))

f20(x) := f19(f19(x))

f21(x) := f20(f20(x))

f22(x) := f21(f21(x))

f23(x) := f22(f22(x))

f24(x) := f23(f23(x))

f25(x) := f24(f24(x))

f26(x) := f25(f25(x))

f27(x) := f26(f26(x))

f28(x) := f27(f27(x))

f29(x) := f28(f28(x))

f30(x) := f29(f29(x))

f31(x) := f30(f30(x))

f32(x) := f31(f31(x))

f33(x) := f32(f32(x))

f34(x) := f33(f33(x))

f35(x) := f34(f34(x))

f36(x) := f35(f35(x))

f37(x) := f36(f36(x))

f38(x) := f37(f37(x))

f39(x) := f38(f38(x))

f40(x) := f39(f39(x))

proved contains b.subject if {
	some b in input.beds
	f40(b.area) > 0
}
