package greysill.bed.invasive_plants_test

import rego.v2

import data.greysill.bed.invasive_plants

good := {"subject": "good", "plant": "another plant", "country": "US"}

test_pass_another_plant if {
	items := [good, {"subject": "other", "plant": "another plant", "country": "US"}]
	invasive_plants.proved == {"good", "other"} with input as {"roots": items}
}

test_pass_reed_in_europe if {
	items := [good, {"subject": "other", "plant": "common reed", "country": "DE"}]
	invasive_plants.proved == {"good", "other"} with input as {"roots": items}
}

test_pass_canary_grass_in_europe if {
	items := [good, {"subject": "other", "plant": "reed canary grass", "country": "IE"}]
	invasive_plants.proved == {"good", "other"} with input as {"roots": items}
}

test_fail_reed_in_america if {
	items := [good, {"subject": "other", "plant": "common reed", "country": "US"}]
	invasive_plants.proved == {"good"} with input as {"roots": items}
}

test_fail_canary_grass_in_america if {
	items := [good, {"subject": "other", "plant": "reed canary grass", "country": "US"}]
	invasive_plants.proved == {"good"} with input as {"roots": items}
}

test_fail_reed_where_nobody_asked if {
	items := [good, {"subject": "other", "plant": "common reed", "country": "NZ"}]
	invasive_plants.proved == {"good"} with input as {"roots": items}
}

test_not_shown_plant if {
	items := [good, {"subject": "other", "country": "US"}]
	invasive_plants.proved == {"good"} with input as {"roots": items}
}

test_not_shown_country if {
	items := [good, {"subject": "other", "plant": "common reed"}]
	invasive_plants.proved == {"good"} with input as {"roots": items}
}
