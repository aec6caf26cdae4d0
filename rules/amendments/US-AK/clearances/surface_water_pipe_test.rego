package greysill.clearances.surface_water_pipe_test

import rego.v2

import data.greysill.clearances.surface_water_pipe

limits := {"surface_water_from_pipe": {"value": 30}}

good := {"subject": "good", "works": "pipe", "distance": 40}

test_pass_far_enough if {
	surface_water_pipe.proved == {"good"} with input as {"clearances": {"surface_water": [good]}}
		with data.limits as limits
	surface_water_pipe.excused == set() with input as {"clearances": {"surface_water": [good]}}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "works": "pipe", "distance": 30}]
	surface_water_pipe.proved == {"limit"} with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
}

test_fail_too_near if {
	items := [good, {"subject": "bad", "works": "pipe", "distance": 29.9}]
	surface_water_pipe.proved == {"good"} with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
	surface_water_pipe.excused == set() with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
}

test_not_shown_distance if {
	items := [good, {"subject": "unknown", "works": "pipe"}]
	surface_water_pipe.proved == {"good"} with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
	surface_water_pipe.excused == set() with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
}

test_not_shown_works if {
	items := [good, {"subject": "unknown", "distance": 40}]
	surface_water_pipe.proved == {"good"} with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
	surface_water_pipe.excused == set() with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
}

test_excused_other_works if {
	items := array.concat([good], [{"subject": w, "works": w, "distance": 0} | some w in ["tank", "field", "fitting"]])
	surface_water_pipe.proved == {"good"} with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
	excused := surface_water_pipe.excused with input as {"clearances": {"surface_water": items}}
		with data.limits as limits
	{e.subject | some e in excused} == {"tank", "field", "fitting"}
}
