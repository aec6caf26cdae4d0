package greysill.flow.held_level_test

import rego.v2

import data.greysill.flow.held_level

good := {"subject": "good", "at_outlet": true}

test_pass_at_the_outlet if {
	held_level.proved == {"good"} with input as {"held_levels": [good]}
}

test_fail_at_another_level if {
	held_level.proved == {"good"} with input as {"held_levels": [good, {"subject": "bad", "at_outlet": false}]}
}

test_not_shown_at_outlet if {
	held_level.proved == {"good"} with input as {"held_levels": [good, {"subject": "unknown"}]}
}
