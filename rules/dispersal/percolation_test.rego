package greysill.dispersal.percolation_test

import rego.v2

import data.greysill.dispersal.percolation

limits := {
	"percolation_fastest": {"value": 10000},
	"percolation_slowest": {"value": 150000},
}

good := {"subject": "good", "percolation": 60000}

test_pass_good if {
	items := [good]
	percolation.proved == {"good"} with input as {"soil": items}
		with data.limits as limits
}

test_pass_exactly_at_the_fast_limit if {
	items := [{"subject": "other", "percolation": 10000}]
	percolation.proved == {"other"} with input as {"soil": items}
		with data.limits as limits
}

test_pass_exactly_at_the_slow_limit if {
	items := [{"subject": "other", "percolation": 150000}]
	percolation.proved == {"other"} with input as {"soil": items}
		with data.limits as limits
}

test_fail_just_too_fast if {
	items := [good, {"subject": "other", "percolation": 9999}]
	percolation.proved == {"good"} with input as {"soil": items}
		with data.limits as limits
}

test_fail_just_too_slow if {
	items := [good, {"subject": "other", "percolation": 150001}]
	percolation.proved == {"good"} with input as {"soil": items}
		with data.limits as limits
}

test_fail_solid_clay if {
	items := [good, {"subject": "other", "percolation": 1000000.0}]
	percolation.proved == {"good"} with input as {"soil": items}
		with data.limits as limits
}

test_not_shown_percolation if {
	items := [good, {"subject": "other"}]
	percolation.proved == {"good"} with input as {"soil": items}
		with data.limits as limits
}
