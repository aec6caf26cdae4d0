package greysill.records.mulch_renewed_test

import rego.v2

import data.greysill.records.mulch_renewed

limits := {"mulch_renewed": {"value": 5}}

good := {"subject": "good", "kind": "mulch basin", "timed": true, "shortest_interval": 2}

test_pass_renewed if {
	items := [good]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	mulch_renewed.excused == set() with input as {"upkeep": items}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "kind": "mulch basin", "timed": true, "shortest_interval": 5}]
	mulch_renewed.proved == {"limit"} with input as {"upkeep": items}
		with data.limits as limits
	mulch_renewed.excused == set() with input as {"upkeep": items}
		with data.limits as limits
}

test_fail_just_too_late if {
	items := [good, {"subject": "bad", "kind": "mulch basin", "timed": true, "shortest_interval": 5.001}]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	mulch_renewed.excused == set() with input as {"upkeep": items}
		with data.limits as limits
}

test_not_shown_shortest_interval if {
	items := [good, {"subject": "unknown", "kind": "mulch basin", "timed": true}]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	mulch_renewed.excused == set() with input as {"upkeep": items}
		with data.limits as limits
}

test_not_shown_timed if {
	items := [good, {"subject": "unknown", "kind": "mulch basin", "shortest_interval": 2}]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	mulch_renewed.excused == set() with input as {"upkeep": items}
		with data.limits as limits
}

test_not_shown_kind if {
	items := [good, {"subject": "unknown", "timed": true, "shortest_interval": 2}]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	mulch_renewed.excused == set() with input as {"upkeep": items}
		with data.limits as limits
}

test_excused_other_parts if {
	items := [good, {"subject": "pond", "kind": "pond", "timed": true, "shortest_interval": 9}]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	excused := mulch_renewed.excused with input as {"upkeep": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"pond"}
}

test_excused_without_a_task if {
	items := [good, {"subject": "none", "kind": "mulch basin", "timed": false}]
	mulch_renewed.proved == {"good"} with input as {"upkeep": items}
		with data.limits as limits
	excused := mulch_renewed.excused with input as {"upkeep": items}
		with data.limits as limits
	{e.subject | some e in excused} == {"none"}
}
