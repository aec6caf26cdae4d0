package earthwork

import "math"

// Pattern is how plants stand.
type Pattern int

// The patterns of planting.
const (
	SquareRows    Pattern = iota // each plant level with its neighbours
	StaggeredRows                // in triangles of equal sides
)

// Plants is the number of plants for an area at a spacing from plant to plant, a
// part of one counting as one: area / s² in square rows, area / (s² √3 / 2) in
// staggered ones. It leaves out the edges, where the last row may stand nearer or
// farther. ok is false for a negative area, a spacing that is not positive, and a
// number above a thousand million. Common practice, no source.
func Plants(area, spacing float64, pattern Pattern) (number int, ok bool) {
	each := spacing * spacing
	if pattern == StaggeredRows {
		each *= math.Sqrt(3) / 2
	}
	count, ok := result(area/each, area, spacing)
	if !ok || count > 1e9 {
		return 0, false
	}
	return int(math.Ceil(count - rounding)), true
}

// rounding keeps a whole number that arithmetic leaves a hair too large from
// counting one more.
const rounding = 1e-9
