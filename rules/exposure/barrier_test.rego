package greysill.exposure.barrier_test

import rego.v2

import data.greysill.exposure.barrier

limits := {"barrier_height": {"value": 1.2}}

good := {
	"subject": "good",
	"kind": "pond",
	"lies_open": true,
	"barrier_height": 1.5,
	"gate_latches_itself": true,
}

test_pass_high_barrier if {
	items := [good, {
		"subject": "other",
		"kind": "pond",
		"lies_open": true,
		"barrier_height": 1.8,
		"gate_latches_itself": true,
	}]
	barrier.proved == {"good", "other"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [good, {
		"subject": "other",
		"kind": "pond",
		"lies_open": true,
		"barrier_height": 1.2,
		"gate_latches_itself": true,
	}]
	barrier.proved == {"good", "other"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_pass_open_settling_basin if {
	items := [good, {
		"subject": "other",
		"kind": "settling basin",
		"lies_open": true,
		"barrier_height": 1.5,
		"gate_latches_itself": true,
	}]
	barrier.proved == {"good", "other"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_fail_just_too_low if {
	items := [good, {
		"subject": "other",
		"kind": "pond",
		"lies_open": true,
		"barrier_height": 1.199,
		"gate_latches_itself": true,
	}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_fail_gate_stays_open if {
	items := [good, {
		"subject": "other",
		"kind": "pond",
		"lies_open": true,
		"barrier_height": 1.5,
		"gate_latches_itself": false,
	}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_fail_open_tank if {
	items := [good, {
		"subject": "other",
		"kind": "surge tank",
		"lies_open": true,
		"barrier_height": 0,
		"gate_latches_itself": false,
	}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_excused_covered if {
	items := [good, {
		"subject": "other",
		"kind": "surge tank",
		"lies_open": false,
		"barrier_height": 0,
		"gate_latches_itself": false,
	}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == {{"subject": "other", "reason": "it is covered"}} with input as {"open_water": items}
		with data.limits as limits
}

test_excused_spillway if {
	items := [good, {
		"subject": "other",
		"kind": "spillway",
		"lies_open": true,
		"barrier_height": 0,
		"gate_latches_itself": false,
	}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == {{"subject": "other", "reason": "no water stands on a spillway"}}
		with input as {"open_water": items}
		with data.limits as limits
}

test_not_shown_lies_open if {
	items := [good, {"subject": "other", "kind": "pond", "barrier_height": 1.5, "gate_latches_itself": true}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "other", "lies_open": true, "barrier_height": 1.5, "gate_latches_itself": true}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_not_shown_barrier_height if {
	items := [good, {"subject": "other", "kind": "pond", "lies_open": true, "gate_latches_itself": true}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_not_shown_gate_latches_itself if {
	items := [good, {"subject": "other", "kind": "pond", "lies_open": true, "barrier_height": 1.5}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_excused_open_tank_of_untreated_water if {
	tank := {
		"subject": "tank",
		"kind": "surge tank",
		"lies_open": true,
		"treated_first": false,
		"barrier_height": 0,
		"gate_latches_itself": false,
	}
	items := [good, tank, object.union(tank, {"subject": "filter", "kind": "filter"})]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	excused := barrier.excused with input as {"open_water": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"tank", "filter"}
}

test_fail_open_tank_of_treated_water if {
	items := [good, {
		"subject": "tank",
		"kind": "surge tank",
		"lies_open": true,
		"treated_first": true,
		"barrier_height": 0,
		"gate_latches_itself": false,
	}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}

test_not_shown_treated_first if {
	items := [good, {"subject": "tank", "kind": "surge tank", "lies_open": true}]
	barrier.proved == {"good"} with input as {"open_water": items}
		with data.limits as limits
	barrier.excused == set() with input as {"open_water": items}
		with data.limits as limits
}
