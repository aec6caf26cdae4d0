package greysill.settling.tank_volume_test

import rego.v2

import data.greysill.settling.tank_volume

limits := {"tank_volume": {"value": 2}}

good := {"subject": "good", "volume": 3}

test_pass_within if {
	tank_volume.proved == {"good"} with input as {"settling": [good]}
		with data.limits as limits
}

test_pass_exactly_at_the_limit if {
	items := [{"subject": "limit", "volume": 2}]
	tank_volume.proved == {"limit"} with input as {"settling": items}
		with data.limits as limits
}

test_fail_just_too_small if {
	items := [good, {"subject": "bad", "volume": 1.99}]
	tank_volume.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}

test_not_shown_volume if {
	items := [good, {"subject": "unknown"}]
	tank_volume.proved == {"good"} with input as {"settling": items}
		with data.limits as limits
}
