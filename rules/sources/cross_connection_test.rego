package greysill.sources.cross_connection_test

import rego.v2

import data.greysill.sources.cross_connection

apart := {"subject": "the system", "cross_connection": false}

test_pass_nothing_joined if {
	cross_connection.proved == {"the system"} with input as {"system": [apart]}
}

test_fail_joined if {
	systems := [apart, {"subject": "another", "cross_connection": true}]
	cross_connection.proved == {"the system"} with input as {"system": systems}
}

test_not_shown_cross_connection if {
	systems := [apart, {"subject": "another"}]
	cross_connection.proved == {"the system"} with input as {"system": systems}
}
