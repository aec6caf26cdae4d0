package greysill.drains.marked_test

import rego.v2

import data.greysill.drains.marked

good := {"subject": "good", "leads_to_train": true, "marked": true}

test_pass_marked if {
	items := [good]
	marked.proved == {"good"} with input as {"pipes": items}
	marked.excused == set() with input as {"pipes": items}
}

test_fail_not_marked if {
	items := [good, {"subject": "bad", "leads_to_train": true, "marked": false}]
	marked.proved == {"good"} with input as {"pipes": items}
	marked.excused == set() with input as {"pipes": items}
}

test_not_shown_marked if {
	items := [good, {"subject": "unknown", "leads_to_train": true}]
	marked.proved == {"good"} with input as {"pipes": items}
	marked.excused == set() with input as {"pipes": items}
}

test_not_shown_leads_to_train if {
	items := [good, {"subject": "unknown", "marked": true}]
	marked.proved == {"good"} with input as {"pipes": items}
	marked.excused == set() with input as {"pipes": items}
}

test_excused_to_the_sewer if {
	items := [good, {"subject": "waste", "leads_to_train": false, "marked": false}]
	marked.proved == {"good"} with input as {"pipes": items}
	excused := marked.excused with input as {"pipes": items}
	{e.subject | some e in excused} == {"waste"}
}
