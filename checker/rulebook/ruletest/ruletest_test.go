package ruletest_test

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"greysill/checker/rulebook"
	"greysill/checker/rulebook/ruletest"
	"greysill/rules"
)

func TestRulesOfTheBaseBook(t *testing.T) {
	report, err := ruletest.Run(t.Context(), rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS})
	require.NoError(t, err)
	t.Logf("%d tests of rules, %.1f %% of the rules' lines reached", report.Tests, report.Coverage)
	require.Empty(t, report.Problems, report.Problems.Error())
	require.Empty(t, report.Missed, report.Missed.Error())
	require.NotZero(t, report.Tests)
}

const tank = `package greysill.tanks.lid

import rego.v2

proved contains h.subject if {
	some h in input.holdings
	h.has_overflow == true
}

proved contains h.subject if {
	some h in input.holdings
	h.kind == "pond"
}
`

const tests = `package greysill.tanks.lid_test

import rego.v2

import data.greysill.tanks.lid

test_pass_overflow if {
	lid.proved == {"t"} with input as {"holdings": [{"subject": "t", "has_overflow": true}]}
}

test_fail_no_overflow if {
	print("looking")
	lid.proved == {"t"} with input as {"holdings": [{"subject": "t", "has_overflow": false}]}
}

test_not_shown_vacuous if not lid.prooved
`

func TestWhatRunReports(t *testing.T) {
	layer := rulebook.Layer{Name: "county", FS: fstest.MapFS{
		"tanks/lid.rego":      {Data: []byte(tank)},
		"tanks/lid_test.rego": {Data: []byte(tests)},
		"tanks/rim.rego":      {Data: []byte("package greysill.tanks.rim\n\nimport rego.v2\n\nproved contains 1 if false\n\nexcused contains 1 if false\n")},
		"tanks/rim_test.rego": {Data: []byte("package greysill.tanks.rimm_test\n\nimport rego.v2\n\ntest_pass_x if true\n")},
		"tanks/sill.rego":     {Data: []byte("package greysill.tanks.sill\n\nimport rego.v2\n\nproved contains 1 if false\n")},
	}}
	report, err := ruletest.Run(t.Context(), layer)
	require.NoError(t, err)
	require.Equal(t, 4, report.Tests)
	text := report.Problems.Error()
	for _, want := range []string{
		`county/tanks/lid_test.rego:11:1: test_fail_no_overflow fails; it printed "looking\n"`,
		"county/tanks/lid_test.rego:16:31: there is no data.greysill.tanks.lid.prooved",
		"county/tanks/rim_test.rego:1:1: the package is data.greysill.tanks.rimm_test; expected data.greysill.tanks.rim_test",
		"the rule has no test whose name begins with test_fail_",
		"the rule has no test whose name begins with test_not_shown_",
		"the rule has no test whose name begins with test_excused_",
		"county/tanks/sill.rego: the rule has no tests; expected county/tanks/sill_test.rego",
	} {
		require.Contains(t, text, want)
	}
	require.Contains(t, report.Missed.Error(), "county/tanks/lid.rego:10:1: no test reaches this")
}

func TestRunSaysWhatDoesNotParse(t *testing.T) {
	_, err := ruletest.Run(t.Context(), rulebook.Layer{Name: "county", FS: fstest.MapFS{"tanks/lid.rego": {Data: []byte("pakage x")}}})
	require.ErrorContains(t, err, "county/tanks/lid.rego:1")
}
