package greysill.diversion.winter_pipes_test

import rego.v2

import data.greysill.diversion.winter_pipes

good := {"subject": "good", "winter": "below the frost"}

used := [{"subject": "the cold season", "bypass_covers_freezing_months": false}]

idle := [{"subject": "the cold season", "bypass_covers_freezing_months": true}]

test_pass_below_the_frost_or_in_the_warm if {
	items := [good, {"subject": "warm", "winter": "never freezes"}]
	winter_pipes.proved == {"good", "warm"} with input as {"pipe_winter": items, "cold_season": used}
	winter_pipes.excused == set() with input as {"pipe_winter": items, "cold_season": idle}
}

test_fail_in_the_frost if {
	items := [good, {"subject": "bad", "winter": "in the frost"}]
	winter_pipes.proved == {"good"} with input as {"pipe_winter": items, "cold_season": used}
	winter_pipes.excused == set() with input as {"pipe_winter": items, "cold_season": used}
}

test_not_shown_winter if {
	items := [good, {"subject": "unknown"}]
	winter_pipes.proved == {"good"} with input as {"pipe_winter": items, "cold_season": idle}
	winter_pipes.excused == set() with input as {"pipe_winter": items, "cold_season": idle}
}

test_not_shown_bypass_season if {
	items := [good, {"subject": "unknown", "winter": "in the frost"}]
	winter_pipes.proved == {"good"} with input as {"pipe_winter": items, "cold_season": [{"subject": "the cold season"}]}
	winter_pipes.excused == set() with input as {"pipe_winter": items, "cold_season": [{"subject": "the cold season"}]}
}

test_excused_bypassed_in_the_cold if {
	items := [good, {"subject": "idle", "winter": "in the frost"}]
	winter_pipes.proved == {"good"} with input as {"pipe_winter": items, "cold_season": idle}
	excused := winter_pipes.excused with input as {"pipe_winter": items, "cold_season": idle}
	{e.subject | some e in excused} == {"idle"}
}
