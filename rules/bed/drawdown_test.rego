package greysill.bed.drawdown_test

import rego.v2

import data.greysill.bed.drawdown

good := {"subject": "good", "drawdown_at_floor": true, "drawdown_accessible": true}

test_pass_empties_and_reached if {
	items := [good, {"subject": "other", "drawdown_at_floor": true, "drawdown_accessible": true}]
	drawdown.proved == {"good", "other"} with input as {"beds": items}
}

test_fail_above_the_floor if {
	items := [good, {"subject": "other", "drawdown_at_floor": false, "drawdown_accessible": true}]
	drawdown.proved == {"good"} with input as {"beds": items}
}

test_fail_buried_valve if {
	items := [good, {"subject": "other", "drawdown_at_floor": true, "drawdown_accessible": false}]
	drawdown.proved == {"good"} with input as {"beds": items}
}

test_not_shown_drawdown_at_floor if {
	items := [good, {"subject": "other", "drawdown_accessible": true}]
	drawdown.proved == {"good"} with input as {"beds": items}
}

test_not_shown_drawdown_accessible if {
	items := [good, {"subject": "other", "drawdown_at_floor": true}]
	drawdown.proved == {"good"} with input as {"beds": items}
}
