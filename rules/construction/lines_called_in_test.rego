package greysill.construction.lines_called_in_test

import rego.v2

import data.greysill.construction.lines_called_in

good := {"subject": "good", "lines_called_in": true}

test_pass_planned if {
	items := [good]
	lines_called_in.proved == {"good"} with input as {"construction": items}
}

test_fail_not_planned if {
	items := [good, {"subject": "bad", "lines_called_in": false}]
	lines_called_in.proved == {"good"} with input as {"construction": items}
}

test_not_shown_lines_called_in if {
	items := [good, {"subject": "unknown"}]
	lines_called_in.proved == {"good"} with input as {"construction": items}
}
