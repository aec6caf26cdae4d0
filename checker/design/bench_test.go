package design

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

func BenchmarkRead(b *testing.B) {
	text, err := os.ReadFile("../../examples/passing-bed.json")
	require.NoError(b, err)
	Prepare()
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		_, problems := Read("passing-bed.json", text)
		require.Empty(b, problems)
	}
}

func BenchmarkSchema(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		compile(draft7.Replace(published()))
	}
}
