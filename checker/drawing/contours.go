package drawing

import (
	"math"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

// contour is one contour line: its level and its pieces, in metres.
type contour struct {
	level  float64
	pieces [][]geometry.Point
}

// contours gives the lines of equal level over triangles, at whole multiples of an
// interval. A line runs straight over each triangle, as the surface does.
func contours(triangles [][3]ground.Spot, interval float64) []contour {
	low, high := math.Inf(1), math.Inf(-1)
	for _, t := range triangles {
		for _, s := range t {
			low, high = min(low, s.Z), max(high, s.Z)
		}
	}
	var all []contour
	for k := math.Ceil(low / interval); k*interval <= high; k++ {
		if pieces := joined(cutLevel(triangles, k*interval)); len(pieces) > 0 {
			all = append(all, contour{k * interval, pieces})
		}
	}
	return all
}

// cutLevel gives the stretch of a contour over each triangle that it crosses. A
// corner at the level counts as above it.
func cutLevel(triangles [][3]ground.Spot, level float64) [][2]geometry.Point {
	var cuts [][2]geometry.Point
	for _, t := range triangles {
		var ends []geometry.Point
		for i := range t {
			if a, b := t[i], t[(i+1)%3]; (a.Z >= level) != (b.Z >= level) {
				ends = append(ends, between(a, b, level))
			}
		}
		if len(ends) == 2 && ends[0] != ends[1] {
			cuts = append(cuts, [2]geometry.Point{ends[0], ends[1]})
		}
	}
	return cuts
}

// between is where an edge has a level. It is worked out the same way for both
// triangles that share the edge, so that their ends meet.
func between(a, b ground.Spot, level float64) geometry.Point {
	if b.X < a.X || b.X == a.X && b.Y < a.Y {
		a, b = b, a
	}
	return along(geometry.Point{X: a.X, Y: a.Y}, geometry.Point{X: b.X, Y: b.Y}, (level-a.Z)/(b.Z-a.Z))
}

// joined puts stretches that share an end together.
func joined(cuts [][2]geometry.Point) [][]geometry.Point {
	at := map[geometry.Point][]int{}
	for i, c := range cuts {
		at[c[0]], at[c[1]] = append(at[c[0]], i), append(at[c[1]], i)
	}
	used := make([]bool, len(cuts))
	follow := func(line []geometry.Point) []geometry.Point {
		for {
			end, on := line[len(line)-1], -1
			for _, i := range at[end] {
				if !used[i] {
					on = i
					break
				}
			}
			if on < 0 {
				return line
			}
			used[on] = true
			next := cuts[on][0]
			if next == end {
				next = cuts[on][1]
			}
			line = append(line, next)
		}
	}
	var lines [][]geometry.Point
	for i, c := range cuts {
		if used[i] {
			continue
		}
		used[i] = true
		back := follow([]geometry.Point{c[1], c[0]})
		for l, r := 0, len(back)-1; l < r; l, r = l+1, r-1 {
			back[l], back[r] = back[r], back[l]
		}
		lines = append(lines, follow(back))
	}
	return lines
}
