package greysill.overflow.path_test

import rego.v2

import data.greysill.overflow.path

good := {"subject": "good", "has_overflow": true, "overflow_ends_safely": true}

test_pass_overflow_to_a_safe_end if {
	path.proved == {"good"} with input as {"holdings": [good]}
}

test_fail_no_overflow if {
	holdings := [good, {"subject": "tank-1", "has_overflow": false, "overflow_ends_safely": false}]
	path.proved == {"good"} with input as {"holdings": holdings}
}

test_fail_no_overflow_whatever_its_end if {
	holdings := [good, {"subject": "tank-1", "has_overflow": false, "overflow_ends_safely": true}]
	path.proved == {"good"} with input as {"holdings": holdings}
}

test_fail_unsafe_end if {
	holdings := [good, {"subject": "tank-1", "has_overflow": true, "overflow_ends_safely": false}]
	path.proved == {"good"} with input as {"holdings": holdings}
}

test_not_shown_has_overflow if {
	holdings := [good, {"subject": "tank-1", "overflow_ends_safely": true}]
	path.proved == {"good"} with input as {"holdings": holdings}
}

test_not_shown_overflow_ends_safely if {
	holdings := [good, {"subject": "tank-1", "has_overflow": true}]
	path.proved == {"good"} with input as {"holdings": holdings}
}
