package ruletest

import (
	"context"
	"fmt"
	"runtime/metrics"
	"time"
)

// bounds are what a run of tests may take. Tests may do more than rules, and a
// single step of one may take long or much memory, which nothing can call off.
type bounds struct {
	time   time.Duration
	memory uint64 // bytes of the heap more than at the start
}

// within runs tests and gives up on them when they go past their bounds.
func within(ctx context.Context, b bounds, run func(context.Context) (*Report, error)) (*Report, error) {
	ctx, cancel := context.WithTimeoutCause(ctx, b.time, fmt.Errorf("the tests together took longer than the limit of %v", b.time))
	defer cancel()
	type outcome struct {
		report *Report
		err    error
	}
	most := heap() + b.memory // before the tests begin
	done := make(chan outcome, 1)
	go func() {
		report, err := run(ctx)
		done <- outcome{report, err}
	}()
	watch := time.NewTicker(10 * time.Millisecond)
	defer watch.Stop()
	for {
		select {
		case o := <-done:
			return o.report, o.err
		case <-ctx.Done():
			return nil, context.Cause(ctx)
		case <-watch.C:
			if heap() > most {
				return nil, fmt.Errorf("the tests took more than the limit of %d MiB of memory", b.memory>>20)
			}
		}
	}
}

// heap gives the bytes of everything on the heap that is not freed yet.
func heap() uint64 {
	samples := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(samples)
	return samples[0].Value.Uint64()
}
