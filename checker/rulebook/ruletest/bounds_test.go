package ruletest

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"

	"greysill/checker/rulebook"
)

var ample = bounds{time: time.Minute, memory: 1 << 40}

func TestWithinGivesWhatTheRunGives(t *testing.T) {
	want := &Report{Tests: 3}
	got, err := within(t.Context(), ample, func(context.Context) (*Report, error) { return want, nil })
	require.NoError(t, err)
	require.Same(t, want, got)
	_, err = within(t.Context(), ample, func(context.Context) (*Report, error) { return nil, errors.New("no") })
	require.EqualError(t, err, "no")
}

// What cannot be called off is left behind.
func TestWithinGivesUp(t *testing.T) {
	end := make(chan struct{})
	defer close(end)
	stuck := func(context.Context) (*Report, error) {
		<-end
		return nil, nil
	}
	_, err := within(t.Context(), bounds{time: time.Millisecond, memory: 1 << 40}, stuck)
	require.EqualError(t, err, "the tests together took longer than the limit of 1ms")

	called, cancel := context.WithCancel(t.Context())
	cancel()
	_, err = within(called, ample, stuck)
	require.ErrorIs(t, err, context.Canceled)

	runtime.GC()
	_, err = within(t.Context(), bounds{time: time.Minute, memory: 1 << 20}, func(ctx context.Context) (*Report, error) {
		held := make([]byte, 64<<20) // far more than what earlier tests left to be freed
		defer runtime.KeepAlive(held)
		return stuck(ctx)
	})
	require.EqualError(t, err, "the tests took more than the limit of 1 MiB of memory")
}

func doubling(times int) string {
	lines := "\ta0 := [1, 2]\n\tc0 := [1, 3]\n"
	for i := range times {
		lines += fmt.Sprintf("\ta%d := [a%d, a%d]\n\tc%d := [c%d, c%d]\n", i+1, i, i, i+1, i, i)
	}
	return lines
}

// A test whose lists double from line to line would be compared for ever; this one
// ends after some seconds.
func TestAHostileTestIsGivenUp(t *testing.T) {
	layer := rulebook.Layer{Name: "county", FS: fstest.MapFS{
		"a/b.rego":      {Data: []byte("package greysill.a.b\n\nimport rego.v2\n\nproved contains 1 if false\n")},
		"a/b_test.rego": {Data: []byte("package greysill.a.b_test\n\nimport rego.v2\n\ntest_pass_x if {\n" + doubling(25) + "\ta25 == c25\n}\n")},
	}}
	_, err := within(t.Context(), bounds{time: 50 * time.Millisecond, memory: 1 << 40}, func(ctx context.Context) (*Report, error) { return run(ctx, layer) })
	require.EqualError(t, err, "the tests together took longer than the limit of 50ms")
}
