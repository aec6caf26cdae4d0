package main

import (
	"context"
	"io"
	"testing"
)

func BenchmarkZZFolder(b *testing.B) {
	for b.Loop() {
		run(context.Background(), console{nil, io.Discard, io.Discard}, []string{"review", "/tmp/bench/designs"})
	}
}
func BenchmarkZZOne(b *testing.B) {
	for b.Loop() {
		run(context.Background(), console{nil, io.Discard, io.Discard}, []string{"review", "/tmp/perf/passing-bed.json"})
	}
}
