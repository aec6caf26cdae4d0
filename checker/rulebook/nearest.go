package rulebook

import (
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"

	"greysill/checker/source"
)

// longest is as much of a text as is looked at: names are shorter.
const longest = 200

// nearest gives the name most like the one written, "" when none is near.
func nearest(written string, names []string) string {
	written = written[:min(len(written), longest)]
	best, least := "", max(2, len(written)/3)+1
	for _, name := range names {
		if d := levenshtein.ComputeDistance(written, name); d < least {
			best, least = name, d
		}
	}
	return best
}

// suggestion words what there is in place of an unknown name, for a problem's
// expected and remedy.
func suggestion(written string, names []string) (expected, remedy string) {
	names = slices.Sorted(slices.Values(names))
	if name := nearest(written, names); name != "" {
		remedy = "did you mean " + source.Quote(name) + "?"
	}
	switch {
	case len(names) == 0:
		return "none, for there are none", remedy
	case len(names) > 20 && remedy != "":
		return "", remedy
	case len(names) > 20:
		names = append(names[:20:20], "…")
	}
	return "one of " + strings.Join(names, ", "), remedy
}
