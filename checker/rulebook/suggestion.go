package rulebook

import (
	"slices"
	"strings"

	"greysill/checker/source"
)

// suggestion words what there is in place of an unknown name, for a problem's
// expected and remedy.
func suggestion(written string, names []string) (expected, remedy string) {
	names = slices.Sorted(slices.Values(names))
	if name := source.Nearest(written, names); name != "" {
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
