package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// buried is a pipe under ground of some spot levels, with buried services.
func buried(levels, services, pipe string) entries {
	return piping(`"kind": "drain pipe", ` + pipe).with(entries{
		"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]], "levels": [` + levels + `], "services": [` + services + `]}`,
	})
}

const (
	// The ground rises 5 % to the east.
	slope = `[0, 0, 10], [60, 0, 13], [60, 40, 13], [0, 40, 10]`
	// A roof of ground with its ridge at x = 10.
	ridge = `[0, 0, 10], [0, 40, 10], [10, 0, 11], [10, 40, 11], [20, 0, 10], [20, 40, 10]`
)

func TestCover(t *testing.T) {
	tests := map[string]struct {
		levels, pipe string
		want         map[string]map[string]any
	}{
		// The ground is at 10.5 m and 11 m, the pipe's top at 9.1 m and 8.9 m.
		"down while the ground rises": {slope, `"path": [[10, 10], [20, 10]], "inverts": ["9 m", "8.8 m"]`, map[string]map[string]any{
			"pipe-1": {"least_cover": 10.5 - 9.1, "least_cover_at": "point 1 of the path", "greatest_cover": 11 - 8.9, "greatest_cover_at": "point 2 of the path"},
		}},
		"along a contour": {slope, `"path": [[10, 10], [10, 20]], "inverts": ["9 m", "9 m"]`, map[string]map[string]any{
			"pipe-1": {"least_cover": 10.5 - 9.1, "least_cover_at": "everywhere", "greatest_cover": 10.5 - 9.1, "greatest_cover_at": "everywhere"},
		}},
		"under a ridge": {ridge, `"path": [[5, 20], [14, 20]], "inverts": ["9 m", "9 m"]`, map[string]map[string]any{
			"pipe-1": {"least_cover": 10.5 - 9.1, "least_cover_at": "point 1 of the path", "greatest_cover": 11 - 9.1, "greatest_cover_at": "between points 1 and 2 of the path"},
		}},
		"out of the ground": {slope, `"path": [[10, 10], [0, 10]], "inverts": ["10.2 m", "10.1 m"]`, map[string]map[string]any{
			"pipe-1": {"least_cover": 10 - 10.2, "greatest_cover": 10.5 - 10.3},
		}},
		// Half of the way lies each side of the corner: the invert is 8.9 m there.
		"one grade round a corner": {slope, `"path": [[10, 10], [20, 10], [20, 20]], "inverts": ["9 m", "8.8 m"]`, map[string]map[string]any{
			"pipe-1": {"least_cover": 10.5 - 9.1, "greatest_cover": 11 - 8.9, "greatest_cover_at": "point 3 of the path"},
		}},
		"a grade each side of a corner": {slope, `"path": [[10, 10], [20, 10], [20, 20]], "inverts": ["9 m", "8.8 m", "8.7 m"]`, map[string]map[string]any{
			"pipe-1 reach 1": {"least_cover": 10.5 - 9.1, "greatest_cover": 11 - 8.9, "greatest_cover_at": "point 2 of the path"},
			"pipe-1 reach 2": {"least_cover": 11 - 8.9, "least_cover_at": "point 2 of the path", "greatest_cover": 11 - 8.8, "greatest_cover_at": "point 3 of the path"},
		}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, buried(tt.levels, "", tt.pipe+`, "diameter": "100 mm"`))
			require.Len(t, f.List("cover"), len(tt.want))
			for reach, want := range tt.want {
				requireKnown(t, f, "cover", reach, want)
			}
		})
	}
}

func TestCoverWithoutEntries(t *testing.T) {
	const path, inverts = `"path": [[10, 10], [20, 10]]`, `, "inverts": ["9 m", "8.8 m"]`
	tests := map[string]struct {
		levels, pipe string
		pointers     []string
	}{
		"no inverts":          {slope, path + `, "diameter": "100 mm"`, []string{"/parts/0/inverts"}},
		"no diameter":         {slope, path + inverts, []string{"/parts/0/diameter"}},
		"no spot levels":      {"", path + inverts + `, "diameter": "100 mm"`, []string{"/site/levels"}},
		"nothing at all":      {"", path, []string{"/parts/0/inverts", "/parts/0/diameter", "/site/levels"}},
		"an end beyond them":  {`[0, 0, 10], [15, 0, 10], [15, 40, 10], [0, 40, 10]`, path + inverts + `, "diameter": "100 mm"`, []string{"/site/levels"}},
		"two levels at one":   {slope + `, [0, 0, 9]`, path + inverts + `, "diameter": "100 mm"`, []string{"/site/levels"}},
		"all levels in a row": {`[0, 0, 10], [10, 10, 10], [20, 20, 10]`, path + inverts + `, "diameter": "100 mm"`, []string{"/site/levels"}},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			f := compute(t, buried(tt.levels, "", tt.pipe))
			for _, field := range []string{"least_cover", "least_cover_at", "greatest_cover", "greatest_cover_at"} {
				requireLacks(t, f, "cover", "pipe-1", field, tt.pointers...)
			}
		})
	}
}
