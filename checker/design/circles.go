package design

import (
	"slices"
	"strings"

	"greysill/checker/source"
)

// circles notes each circle in which water would run, over every way that it
// can take in any season. One circle is told at the way that closes it.
func (f *faults) circles(d *Design) {
	w := walk{faults: f, parts: map[string]*Part{}, state: map[string]state{}}
	for i := range d.Parts {
		if p := &d.Parts[i]; w.parts[p.ID] == nil {
			w.parts[p.ID] = p
		}
	}
	for i := range d.Parts {
		w.from(d.Parts[i].ID)
	}
}

type state int

const (
	unseen state = iota
	onTheWay
	done
)

// walk goes down every way once, deepest first. A way that leads back to a
// part that the walk is still below closes a circle.
type walk struct {
	*faults
	parts map[string]*Part
	state map[string]state
	way   []string
}

func (w *walk) from(id string) {
	part := w.parts[id]
	if part == nil || w.state[id] != unseen {
		return
	}
	w.state[id] = onTheWay
	w.way = append(w.way, id)
	told := map[string]bool{}
	for _, o := range part.Outlets() {
		if w.state[o.Target] == onTheWay && !told[o.Target] {
			told[o.Target] = true
			w.closes(o)
		}
		w.from(o.Target)
	}
	w.way = w.way[:len(w.way)-1]
	w.state[id] = done
}

func (w *walk) closes(o Outlet) {
	circle := append(slices.Clone(w.way[slices.Index(w.way, o.Target):]), o.Target)
	w.at(w.target(o), func() words {
		return words{
			found:    "water runs in a circle: " + chain(circle),
			expected: "ways that lead downhill to an end",
			remedy:   "let one of these drain elsewhere",
		}
	})
}

// chain writes ids one after another, leaving out the middle of many.
func chain(ids []string) string {
	const ends = 8
	shown := make([]string, len(ids))
	for i, id := range ids {
		shown[i] = source.Cut(id)
	}
	if len(shown) > 2*ends {
		shown = slices.Concat(shown[:ends], []string{"…"}, shown[len(shown)-ends:])
	}
	return strings.Join(shown, " → ")
}
