package greysill.diversion.falls_empty_test

import rego.v2

import data.greysill.diversion.falls_empty

limits := {"standing_water_in_pipe": {"value": 0.01}}

frozen(water) := {
	"subject": $"pipe with {water}",
	"rises": false,
	"winter": "in the frost",
	"standing_water": water,
}

empty := frozen(0)

full := object.union(frozen(0.5), {"subject": "full"})

test_pass_exactly_as_empty_as_wanted if {
	falls_empty.proved == {"pipe with 0.01"} with input as {"pipe_winter": [frozen(0.01)]}
		with data.limits as limits
}

test_pass_full_but_below_the_frost if {
	pipes := [object.union(full, {"winter": "below the frost"})]
	falls_empty.proved == {"full"} with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_pass_full_but_never_freezes if {
	pipes := [object.union(full, {"winter": "never freezes"})]
	falls_empty.proved == {"full"} with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_fail_just_too_much if {
	falls_empty.proved == {"pipe with 0"} with input as {"pipe_winter": [empty, frozen(0.0101)]}
		with data.limits as limits
	falls_empty.excused == set() with input as {"pipe_winter": [empty, frozen(0.0101)]}
		with data.limits as limits
}

test_fail_full if {
	falls_empty.proved == {"pipe with 0"} with input as {"pipe_winter": [empty, full]}
		with data.limits as limits
}

test_not_shown_any_field if {
	fields := ["standing_water", "winter", "rises"]
	lacking := [object.union(object.remove(full, [f]), {"subject": f}) | some f in fields]
	pipes := array.concat([empty], lacking)
	falls_empty.proved == {"pipe with 0"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	falls_empty.excused == set() with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_not_shown_whether_it_rises if {
	pipes := [empty, object.remove(object.union(frozen(0), {"subject": "pipe", "winter": "never freezes"}), ["rises"])]
	falls_empty.proved == {"pipe with 0"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	falls_empty.excused == set() with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_excused_pipe_that_rises if {
	pipes := [empty, object.union(full, {"rises": true})]
	falls_empty.proved == {"pipe with 0"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	excused := falls_empty.excused with input as {"pipe_winter": pipes}
		with data.limits as limits
	{e.subject | some e in excused} == {"full"}
}
