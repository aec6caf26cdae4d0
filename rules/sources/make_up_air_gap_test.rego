package greysill.sources.make_up_air_gap_test

import rego.v2

import data.greysill.sources.make_up_air_gap

good := {"subject": "pond-1", "from": "drinking water", "air_gap": true}

test_pass_air_gap if {
	make_up_air_gap.proved == {"pond-1"} with input as {"make_up": [good]}
}

test_fail_no_air_gap if {
	parts := [good, {"subject": "tank-1", "from": "drinking water", "air_gap": false}]
	make_up_air_gap.proved == {"pond-1"} with input as {"make_up": parts}
	make_up_air_gap.excused == set() with input as {"make_up": parts}
}

test_not_shown_air_gap if {
	parts := [good, {"subject": "tank-1", "from": "drinking water"}]
	make_up_air_gap.proved == {"pond-1"} with input as {"make_up": parts}
	make_up_air_gap.excused == set() with input as {"make_up": parts}
}

test_not_shown_from if {
	parts := [good, {"subject": "tank-1", "air_gap": true}, {"subject": "tank-2", "air_gap": false}]
	make_up_air_gap.proved == {"pond-1"} with input as {"make_up": parts}
	make_up_air_gap.excused == set() with input as {"make_up": parts}
}

test_excused_rainwater if {
	parts := [
		good,
		{"subject": "tank-1", "from": "rainwater"},
		{"subject": "tank-2", "from": "rainwater", "air_gap": true},
	]
	excused := make_up_air_gap.excused with input as {"make_up": parts}
	{e.subject | some e in excused} == {"tank-1", "tank-2"}
	make_up_air_gap.proved == {"pond-1"} with input as {"make_up": parts}
}
