package greysill.clearances.cellar_test

import rego.v2

import data.greysill.clearances.cellar

limits := {"cellar_from_field": {"value": 6}}

good := {"subject": "good", "works": "field", "distance": 7}

house(cellar) := [{"subject": "the system", "basement": cellar}]

test_pass_far_enough if {
	cellar.proved == {"good"} with input as {"clearances": {"building": [good]}, "system": house(true)}
		with data.limits as limits
	cellar.excused == set() with input as {"clearances": {"building": [good]}, "system": house(false)}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "field", "distance": 6}]
	cellar.proved == {"limit"} with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
	cellar.excused == set() with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
}

test_fail_too_near if {
	items := [good, {"subject": "bad", "works": "field", "distance": 5.99}]
	cellar.proved == {"good"} with input as {"clearances": {"building": items}, "system": house(true)}
		with data.limits as limits
	cellar.excused == set() with input as {"clearances": {"building": items}, "system": house(true)}
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "field"}]
	cellar.proved == {"good"} with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
	cellar.excused == set() with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "distance": 7}]
	cellar.proved == {"good"} with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
	cellar.excused == set() with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
}

test_not_shown_basement if {
	items := [good, {"subject": "unknown", "works": "field", "distance": 5}]
	cellar.proved == {"good"} with input as {"clearances": {"building": items}, "system": [{"subject": "the system"}]}
		with data.limits as limits
	cellar.excused == set() with input as {"clearances": {"building": items}, "system": [{"subject": "the system"}]}
		with data.limits as limits
}

test_excused_no_cellar if {
	items := [good, {"subject": "near", "works": "field", "distance": 5}]
	cellar.proved == {"good"} with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
	excused := cellar.excused with input as {"clearances": {"building": items}, "system": house(false)}
		with data.limits as limits
	{e.subject | some e in excused} == {"near"}
}

test_excused_other_works if {
	items := array.concat([good], [{"subject": w, "works": w, "distance": 0} | some w in ["tank", "pipe", "fitting"]])
	cellar.proved == {"good"} with input as {"clearances": {"building": items}, "system": house(true)}
		with data.limits as limits
	excused := cellar.excused with input as {"clearances": {"building": items}, "system": house(true)}
		with data.limits as limits
	{e.subject | some e in excused} == {"tank", "pipe", "fitting"}
}
