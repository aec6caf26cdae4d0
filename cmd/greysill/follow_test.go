package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// shared is a buffer that is written to while it is read.
type shared struct {
	mutex sync.Mutex
	bytes.Buffer
}

func (s *shared) Write(p []byte) (int, error) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.Buffer.Write(p)
}

func (s *shared) String() string {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.Buffer.String()
}

// A sheet is kept current while its design is drawn: by a change of the design, by
// half-done work, and by a change of an amendment.
func TestFollow(t *testing.T) {
	dir := t.TempDir()
	drawn, sheet, county := filepath.Join(dir, "design.json"), filepath.Join(dir, "sheet.html"), filepath.Join(dir, "county")
	require.NoError(t, os.WriteFile(drawn, starter, 0o644))
	require.NoError(t, os.CopyFS(county, os.DirFS("../../examples/local-amendment")))
	ctx, end := context.WithCancel(t.Context())
	said, over := &shared{}, make(chan int)
	go func() {
		over <- review(ctx, console{strings.NewReader(""), &shared{}, said}, []string{"--follow", "--amend", county, "--report", "sheet=" + sheet, drawn})
	}()
	shows := func(words string) {
		t.Helper()
		require.Eventually(t, func() bool {
			page, err := os.ReadFile(sheet)
			return err == nil && strings.Contains(string(page), words)
		}, time.Minute, 20*time.Millisecond, "the sheet never shows %q", words)
	}
	shows("Starter: one planted gravel bed")
	shows(`<meta http-equiv="refresh"`)

	require.NoError(t, os.WriteFile(drawn, []byte(`{"format": `), 0o644))
	require.Eventually(t, func() bool { return strings.Contains(said.String(), "design.json:1:12") }, time.Minute, 20*time.Millisecond)

	require.NoError(t, os.WriteFile(drawn, bytes.Replace(starter, []byte("Starter: one"), []byte("Redrawn: one"), 1), 0o644))
	shows("Redrawn: one planted gravel bed")

	amendment, err := os.ReadFile(filepath.Join(county, "amendment.json"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(county, "amendment.json"), bytes.Replace(amendment, []byte(`"name": "Tarn County"`), []byte(`"name": "Marsh County"`), 1), 0o644))
	shows("Marsh County")
	end()
	<-over
}
