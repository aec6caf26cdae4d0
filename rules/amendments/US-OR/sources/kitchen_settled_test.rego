package greysill.sources.kitchen_settled_test

import rego.v2

import data.greysill.sources.kitchen_settled

good := {"subject": "good", "water": "greywater"}

sink := {
	"subject": "sink",
	"kind": "kitchen sink",
	"water": "kitchen waste",
	"enters_train": true,
	"settles_first": true,
	"ends_safely": true,
	"ends_in_sewer": false,
}

test_pass_no_kitchen_water if {
	waters := ["greywater", "toilet waste", "clear water", "brine"]
	items := [{"subject": w, "water": w} | some w in waters]
	kitchen_settled.proved == {w | some w in waters} with input as {"inflows": items}
}

test_pass_a_sink_that_settles if {
	kitchen_settled.proved == {"sink"} with input as {"inflows": [sink]}
}

test_pass_on_the_sewer if {
	items := [{"subject": "dishwasher", "kind": "dishwasher", "water": "kitchen waste", "enters_train": false, "ends_in_sewer": true}]
	kitchen_settled.proved == {"dishwasher"} with input as {"inflows": items}
}

test_fail_a_sink_that_does_not_settle if {
	items := [good, object.union(sink, {"settles_first": false})]
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}

test_fail_a_sink_that_ends_in_a_brook if {
	items := [good, object.union(sink, {"ends_safely": false})]
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}

test_fail_a_dishwasher_that_settles if {
	items := [good, object.union(sink, {"kind": "dishwasher"})]
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}

test_fail_off_the_train_but_not_on_the_sewer if {
	items := [good, object.union(sink, {"kind": "dishwasher", "enters_train": false})]
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}

test_not_shown_water if {
	items := [good, {"subject": "unknown"}]
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}

test_not_shown_any_field_of_a_sink if {
	items := array.concat([good], [object.remove(sink, [f]) | some f in ["kind", "settles_first", "ends_safely"]])
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}

test_not_shown_where_a_dishwasher_ends if {
	items := [
		good,
		{"subject": "unknown 1", "kind": "dishwasher", "water": "kitchen waste", "enters_train": false},
		{"subject": "unknown 2", "kind": "dishwasher", "water": "kitchen waste", "ends_in_sewer": true},
	]
	kitchen_settled.proved == {"good"} with input as {"inflows": items}
}
