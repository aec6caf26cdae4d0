package figures

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/ground"
)

// drawing is a design made ready to measure.
type drawing struct {
	*design.Design
	parts     []*part
	features  []thing
	services  []thing
	boundary  geometry.Shape
	network   *network
	streams   *streams
	untreated spread // greywater that no bed has treated
	shared    shared
}

// shared is what several lists are worked out from, each made when first asked
// for.
type shared struct {
	ground  func() (*ground.Surface, error)
	flows   func() []flow
	beds    func() []*bed
	running func() []*running
	peaks   func() *peaks
	soakage func() []*soakage
	levels  func() *surfaces
}

// part is a part with its shape in plan.
type part struct {
	*design.Part
	drawing *drawing
	node    int // in the network
	lies    string
	shape   geometry.Shape
	half    float64 // half the width of what is drawn as its middle line
	grounds []covered
	shares  func() Value                 // what is drawn on the same ground
	middles func() []geometry.Point      // of the triangles or stretches of the shape
	under   func() (ground.Extent, bool) // the ground, ok=false where spot levels do not show all of it
}

// thing is what parts keep clear of.
type thing struct {
	id, kind, pointer, lies string
	shape                   geometry.Shape
	outlined                bool
	feature                 *design.Feature // nil of anything else
}

func read(d *design.Design) *drawing {
	g := &drawing{Design: d, boundary: geometry.Outline(points(d.Site.Boundary))}
	g.network = newNetwork(d)
	g.streams = newStreams(d, g.network)
	g.untreated = g.network.from(untreated, isGreywater)
	g.shared = shared{
		ground:  sync.OnceValues(func() (*ground.Surface, error) { return surface(d.Site.Levels) }),
		flows:   sync.OnceValue(g.newFlows),
		beds:    sync.OnceValue(g.newBeds),
		running: sync.OnceValue(g.newRunning),
		peaks:   sync.OnceValue(g.newPeaks),
		soakage: sync.OnceValue(g.newSoakage),
		levels:  sync.OnceValue(g.newSurfaces),
	}
	for i := range d.Parts {
		p := &part{Part: &d.Parts[i], drawing: g, node: len(d.Sources) + i}
		p.shape, p.lies = shape(p.Shape, p.Pointer)
		if p.Kind == trench && len(p.Path) > 0 {
			p.half = p.Width.Value / 2
		}
		p.grounds = p.covers()
		p.middles = sync.OnceValue(p.shape.Middles)
		p.shares = sync.OnceValue(p.groundShared)
		p.under = sync.OnceValues(p.measureGround)
		g.parts = append(g.parts, p)
	}
	for i := range d.Site.Features {
		f := &d.Site.Features[i]
		s, lies := shape(f.Shape, f.Pointer)
		g.features = append(g.features, thing{f.ID, f.Kind, f.Pointer, lies, s, len(f.Outline) > 0, f})
	}
	for _, v := range d.Site.Services {
		s, lies := shape(v.Shape, v.Pointer)
		g.services = append(g.services, thing{v.ID, v.Kind, v.Pointer, lies, s, len(v.Outline) > 0, nil})
	}
	return g
}

func (d *drawing) ground() (*ground.Surface, error) { return d.shared.ground() }

func (d *drawing) flows() []flow { return d.shared.flows() }

func (d *drawing) beds() []*bed { return d.shared.beds() }

func (d *drawing) running() []*running { return d.shared.running() }

func (d *drawing) peaks() *peaks { return d.shared.peaks() }

func (d *drawing) soakage() []*soakage { return d.shared.soakage() }

func (d *drawing) surfaces() *surfaces { return d.shared.levels() }

func (p *part) measureGround() (ground.Extent, bool) {
	surface, err := p.drawing.ground()
	if err != nil {
		return ground.Extent{}, false
	}
	return surface.Under(p.shape)
}

// ofKind gives the parts of some kinds, in the order of the document.
func (d *drawing) ofKind(kinds ...string) []*part {
	var found []*part
	for _, p := range d.parts {
		if slices.Contains(kinds, p.Kind) {
			found = append(found, p)
		}
	}
	return found
}

func (p *part) subject() Subject { return Subject{p.ID, []string{p.ID}, []string{p.Pointer}} }

func (p *part) kind() Value { return text(p.Kind) }

// drawn names an entry of the part as an input.
func (p *part) drawn(entry string) Input {
	return Input{Name: strings.ReplaceAll(nested(entry), "_", " "), Pointer: p.Pointer + "/" + entry}
}

// lack names an entry that the part does not have.
func (p *part) lack(entry string) Lack {
	return Lack{p.Pointer + "/" + entry, nested(entry) + " of " + p.ID}
}

// nested words an entry of an entry: "top_level of the embankment".
func nested(entry string) string {
	whole, of, is := strings.Cut(entry, "/")
	if !is {
		return entry
	}
	return nested(of) + " of the " + whole
}

// unplaced says what is lacking to know the ground that the part covers.
func (p *part) unplaced() []Lack {
	switch {
	case p.shape.Empty():
		return []Lack{{p.Pointer, "the place of " + p.ID + " in plan"}}
	case p.Kind == surgeTank && len(p.Outline) == 0:
		return []Lack{p.lack("outline")}
	case p.Kind == trench && len(p.Path) > 0 && !p.Width.Given():
		return []Lack{p.lack("width")}
	case p.Kind == trench && len(p.Path) > 0 && p.half <= 0:
		return []Lack{{p.Pointer + "/width", "width of " + p.ID + ", more than 0"}}
	}
	return nil
}

// unplaced says what is lacking to know the ground that the thing covers. A
// line drawn for something wide may be its far side, a point of something long
// may be its far end.
func (t *thing) unplaced() []Lack {
	switch {
	case t.shape.Empty():
		return []Lack{{t.pointer, "the place of " + t.id + " in plan"}}
	case wide[t.kind] && !t.outlined:
		return []Lack{{t.pointer + "/outline", "outline of " + t.id}}
	case long[t.kind] && t.shape.Length() <= geometry.Resolution:
		return []Lack{{t.pointer + "/path", "path of " + t.id}}
	}
	return nil
}

// shape gives a shape in plan and the place of its coordinates in the document.
func shape(s design.Shape, pointer string) (in geometry.Shape, lies string) {
	switch {
	case s.At != nil:
		return geometry.At(geometry.Point(*s.At)), pointer + "/at"
	case len(s.Path) > 0:
		return geometry.Path(points(s.Path)), pointer + "/path"
	default:
		return geometry.Outline(points(s.Outline)), pointer + "/outline"
	}
}

func points(ps []design.Point) []geometry.Point {
	list := make([]geometry.Point, len(ps))
	for i, p := range ps {
		list[i] = geometry.Point(p)
	}
	return list
}

func surface(levels []design.Spot) (*ground.Surface, error) {
	spots := make([]ground.Spot, len(levels))
	for i, s := range levels {
		spots[i] = ground.Spot(s)
	}
	return ground.New(spots)
}

func member(pointer string, i int) string { return fmt.Sprintf("%s/%d", pointer, i) }
