package greysill.exposure.no_storage_test

import rego.v2

import data.greysill.exposure.no_storage

good := {"subject": "good", "kind": "drain pipe"}

test_pass_nothing_in_store if {
	items := [good, {"subject": "basin", "kind": "mulch basin"}]
	no_storage.proved == {"good", "basin"} with input as {"parts": items}
}

test_fail_surge_tank if {
	no_storage.proved == {"good"} with input as {"parts": [good, {"subject": "bad", "kind": "surge tank"}]}
}

test_fail_basin_and_pond if {
	items := [good, {"subject": "settling", "kind": "settling basin"}, {"subject": "pond", "kind": "pond"}]
	no_storage.proved == {"good"} with input as {"parts": items}
}

test_not_shown_kind if {
	no_storage.proved == {"good"} with input as {"parts": [good, {"subject": "unknown"}]}
}
