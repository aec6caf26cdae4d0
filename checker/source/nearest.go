package source

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/agnivade/levenshtein"
)

// ByDistance puts the names nearest to the one written first, and of those as
// near the ones of its length: letters are changed round more often than lost.
func ByDistance(written string, names []string) []string {
	length := utf8.RuneCountInString(written)
	apart := func(name string) (int, int) {
		return distance(written, name), max(length, utf8.RuneCountInString(name)) - min(length, utf8.RuneCountInString(name))
	}
	return slices.SortedStableFunc(slices.Values(names), func(a, b string) int {
		da, la := apart(a)
		db, lb := apart(b)
		return cmp.Or(da-db, la-lb)
	})
}

// Nearest gives the name closest to the one written, "" when none is close
// enough to have been meant.
func Nearest(written string, names []string) string {
	if len(names) == 0 {
		return ""
	}
	best := ByDistance(written, names)[0]
	if far := distance(written, best); far > max(1, (utf8.RuneCountInString(best)+1)/3) {
		return ""
	}
	return best
}

// distance is the number of characters to change, whatever their case. Only as
// much of a text is looked at as a name can be long.
func distance(written, name string) int {
	return levenshtein.ComputeDistance(strings.ToLower(written[:min(len(written), 200)]), strings.ToLower(name))
}
