package report_test

import (
	"bytes"
	"encoding/xml"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/report"
	"greysill/checker/rulebook"
)

// junitSuite is what the tests look at of a suite.
type junitSuite struct {
	Name     string `xml:"name,attr"`
	Tests    int    `xml:"tests,attr"`
	Failures int    `xml:"failures,attr"`
	Errors   int    `xml:"errors,attr"`
	Skipped  int    `xml:"skipped,attr"`
	Cases    []struct {
		Name    string    `xml:"name,attr"`
		Skipped *string   `xml:"skipped"`
		Error   *struct{} `xml:"error"`
		Failure *struct {
			Text string `xml:",chardata"`
		} `xml:"failure"`
		Output string `xml:"system-out"`
	} `xml:"testcase"`
}

func suitesOf(t *testing.T, run ofRun, o report.Options) []junitSuite {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, run.write("junit", &b, o))
	var all struct {
		Suites []junitSuite `xml:"testsuite"`
	}
	require.NoError(t, xml.Unmarshal(b.Bytes(), &all))
	return all.Suites
}

func TestJUnitCountsItsCases(t *testing.T) {
	run := everything(t)
	suites := suitesOf(t, run, report.Options{})
	require.Len(t, suites, len(run.designs))
	for _, s := range suites {
		var failures, errors, skipped int
		for _, c := range s.Cases {
			if c.Failure != nil {
				failures++
				require.NotEmpty(t, c.Failure.Text)
			}
			if c.Error != nil {
				errors++
			}
			if c.Skipped != nil {
				skipped++
			}
		}
		require.Equal(t, []int{len(s.Cases), failures, errors, skipped}, []int{s.Tests, s.Failures, s.Errors, s.Skipped}, s.Name)
	}
}

// A suite fails where the exit status says so, and warnings fail where they are
// asked to.
func TestJUnitFailsWhatFails(t *testing.T) {
	run := everything(t)
	plain, strict := suitesOf(t, run, report.Options{}), suitesOf(t, run, report.Options{Strict: true})
	for i := range run.designs {
		j := &run.designs[i]
		status := j.Status()
		require.Equal(t, status == rulebook.Unjudged, plain[i].Errors > 0, j.Name)
		if j.Verdict == nil {
			continue
		}
		counts := j.Verdict.Counts()
		require.Equal(t, counts.Fail, plain[i].Failures, j.Name)
		require.Equal(t, counts.Fail+counts.Warn+counts.Remarks, strict[i].Failures, j.Name)
	}
}
