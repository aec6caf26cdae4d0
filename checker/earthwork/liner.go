package earthwork

import (
	"cmp"
	"math"
	"slices"

	"greysill/checker/geometry"
)

// SheetSource says how the size of a liner's sheet is known.
const SheetSource = "bottom + 2 × depth × √(1 + run²) + 2 × overlap, each way; geometry, common practice, no source"

// SheetSide is the length or the width of a liner's sheet: across the bottom, up
// the slope on both sides, and the overlap beyond both edges. The familiar rule for
// gardens, length + 2 depths + 2 overlaps, is the case of upright walls; applied to
// the length at the top of sloping sides it orders more than is needed. ok is false
// for a negative value. Source: SheetSource.
func SheetSide(bottom, depth, run, overlap float64) (side float64, ok bool) {
	return result(bottom+2*depth*math.Hypot(1, run)+2*overlap, bottom, depth, run, overlap)
}

// Sheet is the smallest rectangular sheet that lines a basin, from the outline of its
// rim: the smallest rectangle round the rim, with SheetSide each way. Length is the
// longer side. It fits rectangles; for any other outline it is enough, and what is cut
// off at the corners is waste. ok is false for an outline that encloses no area and
// for a negative value.
func Sheet(rim []geometry.Point, depth, run, overlap float64) (length, width float64, ok bool) {
	r, err := newRing(rim)
	if err != nil {
		return 0, 0, false
	}
	long, short := r.box()
	beyond := 2*depth*(math.Hypot(1, run)-run) + 2*overlap // of the sheet over the rectangle
	if !measures(depth, run, overlap) || !finite(beyond) {
		return 0, 0, false
	}
	return long + beyond, short + beyond, true
}

// box gives the sides of the smallest rectangle round the ring, the longer first.
// One of its sides lies along an edge of the convex hull (Freeman and Shapira 1975,
// from memory).
func (r *ring) box() (long, short float64) {
	hull := convexHull(r.corners)
	least := math.Inf(1)
	for i, p := range hull {
		q := hull[(i+1)%len(hull)]
		length := math.Hypot(q.X-p.X, q.Y-p.Y)
		along := geometry.Point{X: (q.X - p.X) / length, Y: (q.Y - p.Y) / length}
		one, other := extent(hull, along), extent(hull, geometry.Point{X: -along.Y, Y: along.X})
		if one*other < least {
			least, long, short = one*other, max(one, other), min(one, other)
		}
	}
	return long, short
}

// extent is how far corners reach in a direction.
func extent(corners []geometry.Point, direction geometry.Point) float64 {
	low, high := piece(corners).extremes(linear{x: direction.X, y: direction.Y})
	return high - low
}

// convexHull gives the corners of the hull counterclockwise: the lower chain from
// left to right, then the upper one back (Andrew 1979, from memory).
func convexHull(corners []geometry.Point) []geometry.Point {
	sorted := slices.Clone(corners)
	slices.SortFunc(sorted, func(a, b geometry.Point) int {
		return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y))
	})
	lower := chain(sorted)
	slices.Reverse(sorted)
	upper := chain(sorted)
	return append(lower[:len(lower)-1], upper[:len(upper)-1]...)
}

// chain keeps those of the points in order between which the way turns left.
func chain(sorted []geometry.Point) []geometry.Point {
	var kept []geometry.Point
	for _, p := range sorted {
		for len(kept) > 1 && leftOf(kept[len(kept)-2], kept[len(kept)-1]).at(p) <= 0 {
			kept = kept[:len(kept)-1]
		}
		kept = append(kept, p)
	}
	return kept
}

// AnchorTrench holds a liner's edge in the ground round a basin.
type AnchorTrench struct {
	Setback float64 // from the inside edge to the trench
	Width   float64
	Depth   float64
}

// Take is how much of the sheet one edge needs beyond the basin's edge: over the
// setback, down the trench and across its bottom.
func (t AnchorTrench) Take() float64 { return t.Setback + t.Depth + t.Width }

// Run is the length of the trench round an outline, along its middle, and the volume
// that is dug for it. The errors are those of Offset.
func (t AnchorTrench) Run(outline []geometry.Point) (length, volume float64, err error) {
	length, err = Length(outline, t.Setback+t.Width/2)
	return length, length * t.Width * t.Depth, err
}
