package figures

import (
	"errors"
	"fmt"

	"greysill/checker/geometry"
	"greysill/checker/ground"
	"greysill/checker/quantity"
)

var coverTable = tabulate(
	List{Name: "cover", Doc: "The ground over every reach of every drain pipe and overflow pipe.", Subject: "a reach of pipe"},
	(*drawing).covers, (*cover).subject,
	[]column[*cover]{
		{Field{Name: "least_cover", Kind: Number, Dimension: quantity.Length,
			Doc:     "Least depth of ground over the inside top of the pipe, whose wall is not drawn; negative where it stands out of the ground.",
			Formula: coverFormula}, func(c *cover) Value { return c.of(c.least.depth) }},
		{Field{Name: "least_cover_at", Kind: Text, Doc: "Where it is least."}, func(c *cover) Value { return c.where(c.least) }},
		{Field{Name: "greatest_cover", Kind: Number, Dimension: quantity.Length,
			Doc:     "Greatest depth of ground over the inside top of the pipe; negative where all of it stands out of the ground.",
			Formula: coverFormula}, func(c *cover) Value { return c.of(c.greatest.depth) }},
		{Field{Name: "greatest_cover_at", Kind: Text, Doc: "Where it is greatest."}, func(c *cover) Value { return c.where(c.greatest) }},
	},
)

const coverFormula = "ground − (invert + inside diameter) at each point of the path, and wherever the ground between spot levels bends along it; " +
	"invert on a straight grade from end to end"

// cover is a reach with the depth of ground over it.
type cover struct {
	*reach
	least, greatest buried
	inputs          []Input
	lacks           []Lack
}

// buried is the depth of ground over a place.
type buried struct {
	place
	depth float64
}

// place is a place along a path, from one of its points a share of the way to
// the next.
type place struct {
	point int
	share float64
	at    geometry.Point
	along float64 // from the start of the path, m
}

func (d *drawing) covers() []*cover {
	var all []*cover
	for _, r := range d.reaches() {
		all = append(all, newCover(r))
	}
	return all
}

func newCover(r *reach) *cover {
	c := &cover{reach: r}
	diameter, fall := r.part.diameter(), r.fall()
	c.lacks = append(r.pathless(), outOf(0, fall, diameter).Lacks...)
	surface, lacks := r.drawing.surface("over " + r.name)
	if c.lacks = append(c.lacks, lacks...); len(c.lacks) > 0 {
		return c
	}
	c.inputs = append(fall.Inputs, diameter.Inputs[0], r.drawn("path"), spotLevels)
	c.measure(surface)
	return c
}

func (c *cover) measure(surface *ground.Surface) {
	places := bends(c.path.Points(), surface)
	if len(places) > maxStations {
		c.lacks = []Lack{{levelsPointer, "fewer spot levels over " + c.name + " than can be followed"}}
		return
	}
	for i, p := range places {
		level, ok := surface.Level(p.at)
		if !ok {
			c.lacks = []Lack{noSpots("over " + c.name)}
			return
		}
		here := buried{p, level - c.invertAt(p.along) - c.Diameter.Value}
		if i == 0 || here.depth < c.least.depth-geometry.Resolution {
			c.least = here
		}
		if i == 0 || here.depth > c.greatest.depth+geometry.Resolution {
			c.greatest = here
		}
	}
}

// bends gives the points of a path with the places between them at which the
// ground bends.
func bends(path []geometry.Point, surface *ground.Surface) []place {
	var places []place
	start := 0.0
	for i, from := range path {
		places = append(places, place{i, 0, from, start})
		if i+1 == len(path) || len(places) > maxStations {
			break
		}
		to := path[i+1]
		length := apart(from, to)
		for _, t := range surface.Bends(from, to) {
			places = append(places, place{i, t, geometry.Point{X: from.X + t*(to.X-from.X), Y: from.Y + t*(to.Y-from.Y)}, start + t*length})
		}
		start += length
	}
	return places
}

func apart(a, b geometry.Point) float64 { return geometry.Distance(geometry.At(a), geometry.At(b)) }

// invertAt is the invert at a length along the reach.
func (r *reach) invertAt(along float64) float64 {
	from, to := r.Inverts[r.from].Value, r.Inverts[r.to].Value
	length := r.path.Length()
	if length == 0 {
		return from
	}
	return from + (to-from)*along/length
}

// pathless says what is lacking to follow a pipe.
func (p *part) pathless() []Lack {
	if len(p.Path) < 2 {
		return []Lack{p.lack("path")}
	}
	return nil
}

func (c *cover) of(depth float64) Value { return orUnknown(number(depth, c.inputs...), c.lacks) }

func (c *cover) where(b buried) Value {
	if c.greatest.depth-c.least.depth <= geometry.Resolution {
		return orUnknown(text("everywhere", c.inputs...), c.lacks)
	}
	return orUnknown(text(b.of(c.from), c.inputs...), c.lacks)
}

// of words a place of a path that begins at a point of the pipe's, which
// counts from 0.
func (p place) of(first int) string {
	if p.share > 0 {
		return fmt.Sprintf("between points %d and %d of the path", first+p.point+1, first+p.point+2)
	}
	return fmt.Sprintf("point %d of the path", first+p.point+1)
}

const levelsPointer = "/site/levels"

var spotLevels = Input{Name: "spot levels", Pointer: levelsPointer}

// surface is the ground, or what is lacking to know it at a place.
func (d *drawing) surface(place string) (*ground.Surface, []Lack) {
	surface, err := d.ground()
	var conflict *ground.ConflictError
	switch {
	case errors.As(err, &conflict):
		return nil, []Lack{{levelsPointer, fmt.Sprintf("a single level where spot levels %d and %d lie", conflict.First+1, conflict.Second+1)}}
	case err != nil:
		return nil, []Lack{noSpots(place)}
	}
	return surface, nil
}

func noSpots(place string) Lack {
	return Lack{levelsPointer, "spot levels of the site all round the ground " + place}
}
