package greysill.sources.by_hand_alone_test

import rego.v2

import data.greysill.sources.by_hand_alone

good := {"subject": "good", "water": "greywater", "enters_train": false}

test_pass_on_the_sewer if {
	by_hand_alone.proved == {"good"} with input as {"inflows": [good]}
	by_hand_alone.excused == set() with input as {"inflows": [good]}
}

test_fail_piped_to_the_garden if {
	items := [good, {"subject": "bad", "water": "greywater", "enters_train": true}]
	by_hand_alone.proved == {"good"} with input as {"inflows": items}
	by_hand_alone.excused == set() with input as {"inflows": items}
}

test_not_shown_enters_train if {
	items := [good, {"subject": "unknown", "water": "greywater"}]
	by_hand_alone.proved == {"good"} with input as {"inflows": items}
	by_hand_alone.excused == set() with input as {"inflows": items}
}

test_not_shown_water if {
	items := [good, {"subject": "unknown", "enters_train": false}]
	by_hand_alone.proved == {"good"} with input as {"inflows": items}
	by_hand_alone.excused == set() with input as {"inflows": items}
}

test_excused_other_water if {
	waters := ["toilet waste", "kitchen waste", "clear water", "brine"]
	items := array.concat([good], [{"subject": w, "water": w, "enters_train": true} | some w in waters])
	by_hand_alone.proved == {"good"} with input as {"inflows": items}
	excused := by_hand_alone.excused with input as {"inflows": items}
	{e.subject | some e in excused} == {w | some w in waters}
}
