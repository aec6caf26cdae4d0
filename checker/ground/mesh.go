package ground

import (
	"cmp"
	"math"
	"slices"

	"greysill/checker/geometry"
)

// infinity is the corner that every edge of the hull shares with a triangle
// beyond it, so that each edge of the mesh has a triangle on both sides.
const infinity = int32(math.MaxInt32)

// edge is a directed edge between two spots.
type edge struct{ from, to int32 }

// mesh is a triangulation: for each directed edge, the corner to its left that
// makes a triangle with it. A hull edge, run through clockwise, has infinity to
// its left.
type mesh struct {
	spots []Spot
	apex  map[edge]int32
}

// triangulate builds the Delaunay triangulation of distinct spots by adding one
// after the other (Bowyer 1981, Watson 1981). The triangles beyond the hull and
// the digging of the cavity are as in J. R. Shewchuk's Lecture Notes on
// Delaunay Mesh Generation (2012, from memory).
func triangulate(spots []Spot) (m *mesh, ok bool) {
	third := offLine(spots)
	if third == 0 {
		return nil, false
	}
	m = &mesh{spots: spots, apex: make(map[edge]int32, 6*len(spots))}
	u, v, w := int32(0), int32(1), int32(third)
	if turn(spots[u], spots[v], spots[w]) < 0 {
		u, v = v, u
	}
	m.join(u, v, w)
	m.join(v, u, infinity)
	m.join(w, v, infinity)
	m.join(u, w, infinity)
	start := edge{u, v}
	for i := range spots[2:] {
		if x := int32(i + 2); x != w {
			start = m.insert(x, start)
		}
	}
	return m, true
}

// edges gives every edge once, in order. Those of the hull run clockwise.
func (m *mesh) edges() (all, hull []edge) {
	for e, w := range m.apex {
		switch {
		case e.from == infinity || e.to == infinity:
		case w == infinity:
			hull = append(hull, e)
			all = append(all, e)
		case e.from < e.to && m.apex[edge{e.to, e.from}] != infinity:
			all = append(all, e)
		}
	}
	slices.SortFunc(all, compareEdges)
	slices.SortFunc(hull, compareEdges)
	return all, hull
}

func compareEdges(a, b edge) int {
	return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(a.to, b.to))
}

// offLine finds the first spot that is not in one line with the first two, 0
// when there is none.
func offLine(spots []Spot) int {
	for i := 2; i < len(spots); i++ {
		if turn(spots[0], spots[1], spots[i]) != 0 {
			return i
		}
	}
	return 0
}

func (m *mesh) join(u, v, w int32) {
	m.apex[edge{u, v}], m.apex[edge{v, w}], m.apex[edge{w, u}] = w, u, v
}

func (m *mesh) cut(u, v, w int32) {
	delete(m.apex, edge{u, v})
	delete(m.apex, edge{v, w})
	delete(m.apex, edge{w, u})
}

// insert adds a spot and gives an edge of one of its triangles.
func (m *mesh) insert(x int32, start edge) edge {
	u, v, w := m.walk(start, geometry.Point{X: m.spots[x].X, Y: m.spots[x].Y})
	m.cut(u, v, w)
	m.dig(x, u, v)
	m.dig(x, v, w)
	m.dig(x, w, u)
	return m.solidEdge(x, u, v, w)
}

// dig looks across the edge u–v from the new spot x: a triangle whose circle
// takes x in goes, else the edge makes a triangle with x.
func (m *mesh) dig(x, u, v int32) {
	w, there := m.apex[edge{v, u}]
	if !there {
		return
	}
	if m.circleTakesIn(v, u, w, x) {
		m.cut(v, u, w)
		m.dig(x, u, w)
		m.dig(x, w, v)
		return
	}
	m.join(x, u, v)
}

// solidEdge finds an edge from x with a real triangle to its left.
func (m *mesh) solidEdge(x int32, near ...int32) edge {
	for _, u := range near {
		for _, e := range []edge{{x, u}, {u, x}} {
			if w, there := m.apex[e]; there && w != infinity && u != infinity {
				return e
			}
		}
	}
	for e, w := range m.apex {
		if e.from == x && e.to != infinity && w != infinity {
			return e
		}
	}
	panic("ground: a spot without a triangle")
}

// circleTakesIn reports whether the circle through a triangle takes in a spot.
// Beyond the hull the circle is the half plane outside the hull edge, with the
// edge itself.
func (m *mesh) circleTakesIn(u, v, w, x int32) bool {
	switch infinity {
	case u:
		return m.beyond(v, w, x)
	case v:
		return m.beyond(w, u, x)
	case w:
		return m.beyond(u, v, x)
	}
	return inCircle(m.spots[u], m.spots[v], m.spots[w], m.spots[x]) > 0
}

func (m *mesh) beyond(u, v, x int32) bool {
	a, b, p := m.spots[u], m.spots[v], m.spots[x]
	if side := turn(a, b, p); side != 0 {
		return side > 0
	}
	within := func(a, b, x float64) bool { return min(a, b) <= x && x <= max(a, b) }
	return within(a.X, b.X, p.X) && within(a.Y, b.Y, p.Y)
}

// walk finds the triangle that holds a place, beginning at the triangle left
// of an edge. Outside the hull it gives a triangle with infinity whose hull
// edge sees the place. In a Delaunay triangulation the walk always ends.
func (m *mesh) walk(start edge, p geometry.Point) (u, v, w int32) {
	u, v = start.from, start.to
	w = m.apex[start]
	at := Spot{X: p.X, Y: p.Y}
	for u != infinity && v != infinity && w != infinity {
		switch {
		case turn(m.spots[u], m.spots[v], at) < 0:
			u, v = v, u
		case turn(m.spots[v], m.spots[w], at) < 0:
			u = w
		case turn(m.spots[w], m.spots[u], at) < 0:
			v = w
		default:
			return u, v, w
		}
		w = m.apex[edge{u, v}]
	}
	return u, v, w
}
