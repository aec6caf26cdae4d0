package greysill.services.located_test

import rego.v2

import data.greysill.services.located

good := {"subject": "gas-1", "located": true, "private": false}

test_pass_located if {
	items := [good, {"subject": "pump-cable", "located": true, "private": true}]
	located.proved == {"gas-1", "pump-cable"} with input as {"services": items}
}

test_fail_not_located if {
	items := [good, {"subject": "pump-cable", "located": false, "private": true}]
	located.proved == {"gas-1"} with input as {"services": items}
}

test_not_shown_located if {
	items := [good, {"subject": "pump-cable", "private": true}]
	located.proved == {"gas-1"} with input as {"services": items}
}
