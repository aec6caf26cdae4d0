package earthwork

import (
	"errors"
	"fmt"
	"math"
)

// ErrTrench says that a trench's measures are none.
var ErrTrench = errors.New("a trench has a positive width at the bottom, no negative measure, and a pipe no wider than itself")

// ErrRunOrder says that the places along a pipe's run are too few or not in order.
var ErrRunOrder = errors.New("a run has at least two places, in order from its beginning")

// ShallowError says that at some place the trench does not reach down far enough
// for its pipe to be bedded.
type ShallowError struct{ Place int } // its number along the run, from 0

func (e *ShallowError) Error() string {
	return fmt.Sprintf("at place %d along the run the ground is lower than the top of the pipe's embedment", e.Place+1)
}

// Trench is the cross-section of a trench for a pipe. Somebody who stands in a
// trench can be buried by it: sides are sloped or shored as the rules on
// excavation ask, which this package does not judge.
type Trench struct {
	Width    float64 // of the bottom
	Run      float64 // of the sides for a rise of 1, 0 for upright sides
	Bedding  float64 // thickness under the pipe
	Surround float64 // thickness of the embedment over the pipe
	Pipe     float64 // outside diameter
}

// Place is one place along a pipe's run.
type Place struct {
	Along float64 // distance from the beginning in plan
	Depth float64 // from the ground to the outside bottom of the pipe
}

// TrenchVolumes is what a run of trench takes.
type TrenchVolumes struct {
	Dug       float64 // in bank measure
	Embedment float64 // bedding and surround, without the pipe
	Pipe      float64 // outside volume of the pipe
	Backfill  float64 // above the embedment, in place
}

// Volumes takes off a run from place to place, with the depth varying linearly in
// between and the ground level across the trench. Dug = Embedment + Pipe +
// Backfill. The sections are exact; lengths are in plan, so that for a pipe on a
// grade of 2 % the pipe is 0.02 % too short. The errors are ErrTrench, ErrRunOrder
// and a *ShallowError.
func (t Trench) Volumes(places []Place) (TrenchVolumes, error) {
	if !measures(t.Width, t.Run, t.Bedding, t.Surround, t.Pipe) || t.Width == 0 || t.Pipe > t.Width {
		return TrenchVolumes{}, ErrTrench
	}
	if len(places) < 2 {
		return TrenchVolumes{}, ErrRunOrder
	}
	for i, p := range places {
		if !finite(p.Along, p.Depth) || i > 0 && p.Along <= places[i-1].Along {
			return TrenchVolumes{}, ErrRunOrder
		}
		if p.Depth < t.Pipe+t.Surround {
			return TrenchVolumes{}, &ShallowError{i}
		}
	}
	return t.takeOff(places), nil
}

// Section is the area of the cross-section at a depth, under level ground: the depth
// times the width half way up. ok is false for a negative depth, width or run.
func (t Trench) Section(depth float64) (area float64, ok bool) {
	return result(t.section(depth), t.Width, t.Run, depth)
}

func (t Trench) takeOff(places []Place) TrenchVolumes {
	var v TrenchVolumes
	embedded := t.section(t.Bedding + t.Pipe + t.Surround)
	pipe := math.Pi / 4 * t.Pipe * t.Pipe
	for i := 1; i < len(places); i++ {
		from, to := places[i-1].Depth+t.Bedding, places[i].Depth+t.Bedding
		length := places[i].Along - places[i-1].Along
		v.Dug += prismoid(length, t.section(from), t.section((from+to)/2), t.section(to))
		v.Embedment += length * (embedded - pipe)
		v.Pipe += length * pipe
	}
	v.Backfill = v.Dug - v.Embedment - v.Pipe
	return v
}

func (t Trench) section(depth float64) float64 { return trapezoid(t.Width, t.Run, depth) }
