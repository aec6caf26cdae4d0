package report

import (
	"cmp"
	"slices"
	"strings"

	"github.com/rivo/uniseg"

	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// clearances writes, for everything that parts must keep clear of, the distance
// of every part, the nearest first.
func (s *calculation) clearances(items []*figures.Item) {
	if len(items) == 0 {
		return
	}
	s.heading("Clearances")
	s.hang(0, ink, "Distance: "+distanceField(items[0]).Doc+" The nearest part comes first.")
	s.works(items)
	seen := map[string]bool{}
	for _, it := range items {
		if place := it.Subject.Pointers[1]; !seen[place] {
			seen[place] = true
			s.feature(it, sameFeature(items, it))
		}
	}
}

// works says once of every part what it does with greywater, which decides how
// far off it must be.
func (s *calculation) works(items []*figures.Item) {
	parts, words := map[string][]string{}, []string{}
	for _, it := range items {
		work, known := s.named(it, "works")
		if part := it.Subject.IDs[0]; known && !slices.Contains(parts[work], part) {
			words = append(words, work)
			parts[work] = append(parts[work], part)
		}
	}
	slices.Sort(words)
	if works := fieldNamed(items[0].List, "works"); works != nil {
		s.hang(0, ink, label(works)+": "+works.Doc)
	}
	s.blank()
	for _, word := range slices.Compact(words) {
		s.hang(0, ink, capital(word)+": "+strings.Join(parts[word], ", "))
	}
}

// sameFeature gives the items of one list that are about the feature of one of
// them.
func sameFeature(items []*figures.Item, one *figures.Item) []*figures.Item {
	return slices.DeleteFunc(slices.Clone(items), func(it *figures.Item) bool {
		return it.List != one.List || it.Subject.Pointers[1] != one.Subject.Pointers[1]
	})
}

// feature writes the distances to one feature as a table that is read line by
// line.
func (s *calculation) feature(one *figures.Item, items []*figures.Item) {
	kind, _ := s.named(one, "feature_kind")
	s.blank()
	s.put(0, bold, one.Subject.IDs[1]+following(kind)+s.places(one.Subject.Pointers[1:2]))
	slices.SortStableFunc(items, func(a, b *figures.Item) int { return cmp.Compare(distance(a).Number, distance(b).Number) })
	greatest := 0.0
	for _, it := range items {
		greatest = max(greatest, distance(it).Number)
	}
	var distances, parts []string
	for _, it := range items {
		if d := distance(it); d.Known() {
			distances = append(distances, quantity.UnitFor(quantity.Length, s.units, d.Number, greatest).Format(d.Number))
			parts = append(parts, it.Subject.IDs[0])
		}
	}
	s.table(distances, parts)
	for _, it := range items {
		if d := distance(it); !d.Known() {
			s.hang(1, red, it.Subject.IDs[0]+": NOT KNOWN. Add "+entries(d.Lacks)+".")
		}
	}
}

// table writes pairs of words side by side, as many as the page has room for,
// with the first word of each to the right of its column.
func (s *calculation) table(right, left []string) {
	const gap = 3
	wide, wider := widest(right), widest(left)
	var cells []string
	for i := range right {
		cells = append(cells, padding(right[i], wide)+right[i]+" "+left[i]+padding(left[i], wider+gap))
	}
	for row := range slices.Chunk(cells, max(1, (s.width-column+gap)/(wide+1+wider+gap))) {
		s.lines(column, 2*column, ink, strings.ReplaceAll(strings.TrimRight(strings.Join(row, ""), " "), " ", nbsp))
	}
}

func widest(words []string) int {
	wide := 0
	for _, w := range words {
		wide = max(wide, uniseg.StringWidth(w))
	}
	return wide
}

func padding(word string, wide int) string {
	return strings.Repeat(" ", wide-uniseg.StringWidth(word))
}

// distance gives the figure that a clearance is about.
func distance(it *figures.Item) *figures.Value { return it.Value(distanceField(it).Name) }

func distanceField(it *figures.Item) *figures.Field { return fieldNamed(it.List, "distance") }

func fieldNamed(l *figures.List, name string) *figures.Field {
	for _, f := range l.Fields {
		if f.Name == name {
			return f
		}
	}
	return nil
}
