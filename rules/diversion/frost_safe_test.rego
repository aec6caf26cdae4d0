package greysill.diversion.frost_safe_test

import rego.v2

import data.greysill.diversion.frost_safe

limits := {"pipe_below_frost": {"value": 0.1}}

deep := {"subject": "deep", "on_second_route": true, "winter": "below the frost", "below_frost": 0.5}

pipe(depth) := {
	"subject": $"at {depth}",
	"on_second_route": true,
	"winter": "in the frost",
	"below_frost": depth,
}

test_pass_exactly_below_the_frost if {
	frost_safe.proved == {"at 0.1"} with input as {"pipe_winter": [pipe(0.1)]}
		with data.limits as limits
}

test_pass_never_freezes if {
	pipes := [{"subject": "warm", "on_second_route": true, "winter": "never freezes", "below_frost": -2}]
	frost_safe.proved == {"warm"} with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_fail_just_in_the_frost if {
	pipes := [deep, pipe(0.0999)]
	frost_safe.proved == {"deep"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	frost_safe.excused == set() with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_fail_out_of_the_ground if {
	pipes := [deep, pipe(-1)]
	frost_safe.proved == {"deep"} with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_not_shown_below_frost if {
	pipes := [deep, {"subject": "pipe", "on_second_route": true, "winter": "in the frost"}]
	frost_safe.proved == {"deep"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	frost_safe.excused == set() with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_not_shown_winter if {
	pipes := [deep, {"subject": "pipe", "on_second_route": true, "below_frost": -1}]
	frost_safe.proved == {"deep"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	frost_safe.excused == set() with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_not_shown_on_second_route if {
	pipes := [
		deep,
		{"subject": "pipe 1", "below_frost": 1, "winter": "below the frost"},
		{"subject": "pipe 2", "winter": "never freezes"},
	]
	frost_safe.proved == {"deep"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	frost_safe.excused == set() with input as {"pipe_winter": pipes}
		with data.limits as limits
}

test_excused_other_pipes if {
	pipes := [deep, {"subject": "pipe", "on_second_route": false, "below_frost": -1, "winter": "in the frost"}]
	frost_safe.proved == {"deep"} with input as {"pipe_winter": pipes}
		with data.limits as limits
	excused := frost_safe.excused with input as {"pipe_winter": pipes}
		with data.limits as limits
	{e.subject | some e in excused} == {"pipe"}
}
