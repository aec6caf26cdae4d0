package earthwork

import (
	"errors"
	"math"

	"greysill/checker/geometry"
)

// Why a basin is none.
var (
	ErrBasinLevels = errors.New("a basin's floor lies below its rim, and its levels are finite")
	ErrLayers      = errors.New("the layers reach above the rim, or one has no positive thickness")
)

// Basin is a hole with a level floor and sides of one slope all round: its
// stage–storage relation. The area at a stage h above the level of its outline is
// A + P r h + T r² h², A being the outline's area, P its length, r the run of the
// sides and T the sum of the tangents of half its angles of turn; so that
// volumes are those of the prismoidal formula, without error.
//
// It holds for convex outlines, and for others as long as moving them in to the
// floor and out to the rim leaves every edge and keeps them apart.
type Basin struct {
	ring                 *ring
	level, floor, rim    float64
	run                  float64
	area, length, mitres float64
}

// NewBasin makes a basin from its outline at some level, the run of its sides and
// the levels of its floor and rim. The outline may be drawn at the rim, at the
// floor, at the water's edge or anywhere else. The errors are ErrOutline, ErrRun,
// ErrBasinLevels, and ErrCollapse where the sides run together above the floor or,
// at an inward corner, below the rim.
func NewBasin(outline []geometry.Point, level, run, floor, rim float64) (*Basin, error) {
	r, err := newRing(outline)
	switch {
	case err != nil:
		return nil, err
	case !measures(run):
		return nil, ErrRun
	case !finite(level, floor, rim) || floor >= rim:
		return nil, ErrBasinLevels
	}
	b := &Basin{ring: r, level: level, floor: floor, rim: rim, run: run}
	b.area, b.length, b.mitres = r.growth()
	for _, stage := range []float64{floor, rim} {
		if _, ok := r.offset(run * (stage - level)); !ok {
			return nil, ErrCollapse
		}
	}
	return b, nil
}

// Area is the area of the water's surface at a stage, ok=false below the floor and
// above the rim.
func (b *Basin) Area(stage float64) (area float64, ok bool) {
	if !b.holds(stage) {
		return 0, false
	}
	return b.at(stage), true
}

// Outline is the water's edge at a stage, ok=false below the floor and above the
// rim.
func (b *Basin) Outline(stage float64) (corners []geometry.Point, ok bool) {
	if !b.holds(stage) {
		return nil, false
	}
	return b.ring.offset(b.run * (stage - b.level))
}

// Volume is what the basin holds up to a stage, ok=false below the floor and above
// the rim.
func (b *Basin) Volume(stage float64) (volume float64, ok bool) {
	if !b.holds(stage) {
		return 0, false
	}
	return b.between(b.floor, stage), true
}

// Stage is the level of the water when the basin holds a volume, ok=false for a
// negative volume and for one that it cannot hold.
func (b *Basin) Stage(volume float64) (stage float64, ok bool) {
	if !measures(volume) || volume > b.between(b.floor, b.rim) {
		return 0, false
	}
	low, high := b.floor, b.rim
	for range 100 {
		middle := low + (high-low)/2
		if b.between(b.floor, middle) < volume {
			low = middle
		} else {
			high = middle
		}
	}
	return low + (high-low)/2, true
}

// Sides is the area of the sides between the floor and a stage, measured on the
// slope, ok=false below the floor and above the rim. With the area of the floor it
// is what a liner has to cover.
func (b *Basin) Sides(stage float64) (area float64, ok bool) {
	if !b.holds(stage) {
		return 0, false
	}
	low, high := b.run*(b.floor-b.level), b.run*(stage-b.level)
	mean := b.length + b.mitres*(low+high)
	return mean * (stage - b.floor) * math.Hypot(1, b.run), true
}

// Layers gives the volume of each of several level layers that fill the basin from
// its floor up, from their thicknesses. The error is ErrLayers.
func (b *Basin) Layers(thicknesses []float64) ([]float64, error) {
	bottom := b.floor
	volumes := make([]float64, len(thicknesses))
	for i, thickness := range thicknesses {
		top := bottom + thickness
		if !(thickness > 0) || top > b.rim+geometry.Resolution {
			return nil, ErrLayers
		}
		volumes[i] = b.between(bottom, top)
		bottom = top
	}
	return volumes, nil
}

func (b *Basin) holds(stage float64) bool { return stage >= b.floor && stage <= b.rim }

// between is the volume between two stages by the prismoidal formula.
func (b *Basin) between(low, high float64) float64 {
	return prismoid(high-low, b.at(low), b.at((low+high)/2), b.at(high))
}

func (b *Basin) at(stage float64) float64 {
	t := b.run * (stage - b.level)
	return b.area + b.length*t + b.mitres*t*t
}
