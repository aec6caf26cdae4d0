package earthwork

import (
	"errors"
	"fmt"
	"math"

	"greysill/checker/geometry"
	"greysill/checker/ground"
)

// Why a volume over the ground cannot be taken.
var (
	ErrLevels       = errors.New("levels: expected one for the whole outline, or one for each of its corners, all finite")
	ErrRun          = errors.New("the run of the sides is to be 0 for upright walls or a positive number")
	ErrBeyondGround = errors.New("the earthwork reaches beyond the spot levels of the ground")
	ErrSteepGround  = errors.New("the ground is as steep as the sides of the earthwork, so that they do not come out where they should")
	ErrTooComplex   = errors.New("the outline and the spot levels have too many corners to take the volume")
)

// SteepError says that a floor falls or rises so steeply that its sides do not
// meet at a corner.
type SteepError struct{ Corner int } // its number in the outline, from 0

func (e *SteepError) Error() string {
	return fmt.Sprintf("the floor is as steep as its sides at corner %d", e.Corner+1)
}

// Shape is the floor of an excavation, or the top of an embankment, with sides
// that lead from its edge to the ground: up from a floor, down from a top.
//
// The levels are one for all of it, or one for each corner. Between corners it is
// plane over each of the triangles that geometry.Shape.Triangles cuts the outline
// into, and straight along each edge. Each side is a plane that has the run given
// square to its edge; neighbouring sides are carried on until they meet in a line
// from their corner, as the trade draws them, and are not rounded.
type Shape struct {
	Outline []geometry.Point
	Levels  []float64
	Run     float64 // horizontal distance of the sides for a rise of 1, 0 for upright walls
}

// Body is what is dug out or filled in.
type Body struct {
	Volume float64 // in place: bank measure of a cut, compacted measure of a fill
	Area   float64 // in plan, where the ground is cut or covered
	Depth  float64 // the greatest, upright
}

// Excavation is the ground above a floor and its sides, up to the real surface.
// It is exact: planes are cut by planes. Where the floor lies above the ground
// there is nothing to dig.
//
// The errors are ErrOutline, ErrLevels and ErrRun for a shape that is none,
// ErrBeyondGround where the floor or a side would reach past the spot levels, a
// *SteepError, ErrSteepGround where a side meets ground that rises faster than
// itself after it has come out once, and ErrTooComplex, which bounds the work to
// about a second.
func Excavation(floor Shape, surface *ground.Surface) (Body, error) {
	return floor.against(surface, 1)
}

// Embankment is the fill between the ground and a top with its sides, in all as
// Excavation is, upside down. Where the top lies below the ground there is nothing
// to fill.
func Embankment(top Shape, surface *ground.Surface) (Body, error) {
	return top.against(surface, -1)
}

// against takes the body between a shape and the ground, both turned upside down
// when up is −1.
func (s Shape) against(surface *ground.Surface, up float64) (Body, error) {
	d, err := newDig(s, up)
	if err != nil {
		return Body{}, err
	}
	triangles := d.triangles(surface, up)
	for _, t := range triangles {
		d.overFloor(t)
		if err := d.overSides(t); err != nil {
			return Body{}, err
		}
	}
	if d.floorArea-d.covered > geometry.Resolution*d.perimeter || d.runsOut(triangles) {
		return Body{}, ErrBeyondGround
	}
	return d.body, nil
}

// overFloor adds what one triangle of the ground has above the floor.
func (d *dig) overFloor(t triangle) {
	for _, f := range d.floor {
		q := t.piece.within(f.within)
		d.covered += f.weight * q.area()
		d.add(q, t.level.minus(f.level), f.weight)
	}
}

// overSides adds what one triangle of the ground has above the sides: above the
// lowest of them where several lie over each other, as in a notch, and nothing
// over the floor.
func (d *dig) overSides(t triangle) error {
	for i, side := range d.sides {
		q := t.piece.within(side.within)
		depth := t.level.minus(side.level)
		if _, deepest := q.extremes(depth); deepest <= 0 {
			continue
		}
		for _, part := range d.lowest(q, i) {
			if daylightsTwice(part, depth, side.outward) {
				return ErrSteepGround
			}
			d.add(part, depth, 1)
		}
		if d.work > maxWork {
			return ErrTooComplex
		}
	}
	return nil
}

// daylightsTwice reports whether, going outwards, the ground rises through a side
// that it had already fallen below.
func daylightsTwice(q piece, depth linear, outward geometry.Point) bool {
	low, high := q.extremes(depth)
	return low < -geometry.Resolution && high > geometry.Resolution && depth.x*outward.X+depth.y*outward.Y > 0
}

// add takes in the part of a piece where the depth is positive.
func (d *dig) add(q piece, depth linear, weight float64) {
	if len(q) == 0 {
		return
	}
	cut, _ := q.split(depth)
	_, deepest := cut.extremes(depth)
	d.body.Volume += weight * cut.integral(depth)
	if deepest > 0 {
		d.body.Area += weight * cut.area()
		d.body.Depth = math.Max(d.body.Depth, deepest)
	}
}
