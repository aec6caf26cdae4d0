package greysill.treatment.winter_test

import rego.v2

import data.greysill.treatment.winter

good := {
	"subject": "good",
	"cover": "without snow",
	"inlet": "cooled to the year's mean",
	"runs_in_frost": true,
	"bypassed": false,
	"freezes": false,
}

test_pass_stays_open if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"bypassed": false,
		"freezes": false,
	}]
	winter.proved == {"good", "other"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}

test_fail_freezes if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"bypassed": false,
		"freezes": true,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}

test_excused_snow if {
	items := [good, {
		"subject": "other",
		"cover": "with snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"bypassed": false,
		"freezes": true,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == {{"subject": "other", "reason": "the rule counts on no snow"}}
		with input as {"bed_winter": items}
}

test_excused_warm_water if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "as it leaves the house",
		"runs_in_frost": true,
		"bypassed": false,
		"freezes": true,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == {{"subject": "other", "reason": "the rule takes the water as it has cooled down on its way"}}
		with input as {"bed_winter": items}
}

test_excused_no_frost if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": false,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == {{"subject": "other", "reason": "it does not run in a month that freezes"}}
		with input as {"bed_winter": items}
}

test_excused_bypassed if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"bypassed": true,
		"freezes": true,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == {{"subject": "other", "reason": "the bypass season covers its coldest month"}}
		with input as {"bed_winter": items}
}

test_not_shown_cover if {
	items := [good, {
		"subject": "other",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"bypassed": false,
		"freezes": false,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}

test_not_shown_inlet if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"runs_in_frost": true,
		"bypassed": false,
		"freezes": false,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}

test_not_shown_runs_in_frost if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"bypassed": false,
		"freezes": false,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}

test_not_shown_bypassed if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"freezes": false,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}

test_not_shown_freezes if {
	items := [good, {
		"subject": "other",
		"cover": "without snow",
		"inlet": "cooled to the year's mean",
		"runs_in_frost": true,
		"bypassed": false,
	}]
	winter.proved == {"good"} with input as {"bed_winter": items}
	winter.excused == set() with input as {"bed_winter": items}
}
