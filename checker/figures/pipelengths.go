package figures

import (
	"fmt"
	"slices"

	"greysill/checker/quantity"
)

var pipeLengthTable = tabulate(
	List{Name: "quantities.pipe", Doc: "The drain pipes and overflow pipes of each diameter and material together.", Subject: "pipe of one diameter and material"},
	(*drawing).pipeSizes, (*pipeSize).subject,
	[]column[*pipeSize]{
		{Field{Name: "diameter", Kind: Number, Dimension: quantity.Length, Doc: "Nominal diameter."}, func(s *pipeSize) Value { return s.parts[0].diameter() }},
		{Field{Name: "material", Kind: Text, Doc: "What it is."}, func(s *pipeSize) Value { return s.parts[0].material() }},
		{Field{Name: "length", Kind: Number, Dimension: quantity.Length, Doc: "Length in plan, nothing added for slopes, bends and offcuts.",
			Formula: "Σ √(Δx² + Δy²) from point to point of the paths"}, (*pipeSize).length},
	},
)

// pipeSize is the pipes of one diameter and material.
type pipeSize struct {
	name  string
	parts []*part
}

// pipeKind tells pipes apart. One that lacks an entry is by itself.
type pipeKind struct {
	diameter float64
	material string
	alone    string
}

func (p *part) pipeKind() pipeKind {
	if !p.Diameter.Given() || p.Material == "" {
		return pipeKind{alone: p.ID}
	}
	return pipeKind{p.Diameter.Value, p.Material, ""}
}

func (p *part) material() Value {
	if p.Material == "" {
		return unknown(p.lack("material"))
	}
	return text(p.Material, p.drawn("material"))
}

func (d *drawing) pipeSizes() []*pipeSize {
	var all []*pipeSize
	of := map[pipeKind]*pipeSize{}
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		s := of[p.pipeKind()]
		if s == nil {
			s = &pipeSize{name: p.sizeName()}
			of[p.pipeKind()] = s
			all = append(all, s)
		}
		s.parts = append(s.parts, p)
	}
	return all
}

func (p *part) sizeName() string {
	if kind := p.pipeKind(); kind.alone != "" {
		return kind.alone
	}
	return p.Material + " pipe of " + p.Diameter.Text
}

func (s *pipeSize) subject() Subject {
	subject := Subject{Name: s.name}
	for _, p := range s.parts {
		subject.IDs, subject.Pointers = append(subject.IDs, p.ID), append(subject.Pointers, p.Pointer)
	}
	return subject
}

func (s *pipeSize) length() Value {
	lengths := make([]Value, len(s.parts))
	for i, p := range s.parts {
		lengths[i] = p.inPlan()
	}
	return sum(lengths...)
}

// inPlan is the length of a pipe.
func (p *part) inPlan() Value {
	return orUnknown(number(p.shape.Length(), Input{Name: "path of " + p.ID, Pointer: p.lies}), p.unplaced())
}

var fittingTable = tabulate(
	List{Name: "quantities.fittings", Doc: "The fittings and cleanouts of each kind and diameter together, as drawn on drain pipes, overflow pipes and inlet headers.",
		Subject: "fittings of one kind and diameter"},
	(*drawing).fittings, (*fittings).subject,
	[]column[*fittings]{
		{Field{Name: "kind", Kind: Text, Doc: "What they are."}, func(f *fittings) Value { return text(f.kind) }},
		{Field{Name: "diameter", Kind: Number, Dimension: quantity.Length, Doc: "Nominal diameter."}, func(f *fittings) Value { return f.diameter }},
		{Field{Name: "count", Kind: Number, Dimension: quantity.Number, Doc: "How many are drawn.", Formula: "count"},
			func(f *fittings) Value { return number(float64(f.count), f.drawn...) }},
	},
)

const cleanout = "cleanout"

// bore is the diameter that a fitting is for.
type bore struct {
	diameter Value
	text     string // as written, else whose diameter is lacking
}

// fittings are those of one kind and bore.
type fittings struct {
	kind     string
	bore     bore
	diameter Value
	count    int
	drawn    []Input
	on       Subject
}

func (f *fittings) subject() Subject {
	f.on.Name = f.kind + " of " + f.bore.text
	return f.on
}

func (d *drawing) fittings() []*fittings {
	t := &takeOff{}
	for _, p := range d.ofKind(drainPipe, overflowPipe) {
		of := p.bore(p.ID, "diameter", p.Diameter)
		for i, f := range p.Fittings {
			t.add(p, f.Kind, of, 1, Input{Name: fmt.Sprintf("fitting %d of %s", i+1, p.ID), Pointer: member(p.Pointer+"/fittings", i)})
		}
		t.add(p, cleanout, of, len(p.Cleanouts), Input{Name: "cleanouts of " + p.ID, Pointer: p.Pointer + "/cleanouts"})
	}
	for _, p := range d.parts {
		if p.Inlet != nil {
			of := p.bore("the inlet of "+p.ID, "inlet/diameter", p.Inlet.Diameter)
			t.add(p, cleanout, of, len(p.Inlet.Cleanouts), Input{Name: "cleanouts of the inlet of " + p.ID, Pointer: p.Pointer + "/inlet/cleanouts"})
		}
	}
	return t.all
}

// bore is the diameter of a pipe of the part.
func (p *part) bore(whose, entry string, diameter quantity.Quantity) bore {
	if !diameter.Given() {
		return bore{unknown(Lack{p.Pointer + "/" + entry, "diameter of " + whose}), whose}
	}
	return bore{number(diameter.Value, Input{Name: "diameter of " + whose, Pointer: p.Pointer + "/" + entry}), diameter.Text}
}

// takeOff gathers fittings by kind and bore.
type takeOff struct{ all []*fittings }

func (t *takeOff) add(p *part, kind string, of bore, count int, drawn Input) {
	if count == 0 {
		return
	}
	f := t.like(kind, of)
	f.count += count
	f.drawn = append(f.drawn, drawn)
	if !slices.Contains(f.on.IDs, p.ID) {
		f.on.IDs, f.on.Pointers = append(f.on.IDs, p.ID), append(f.on.Pointers, p.Pointer)
	}
}

// like finds the fittings of a kind and bore, or begins with them.
func (t *takeOff) like(kind string, of bore) *fittings {
	for _, f := range t.all {
		if f.kind == kind && f.bore.alike(of) {
			return f
		}
	}
	t.all = append(t.all, &fittings{kind: kind, bore: of, diameter: of.diameter})
	return t.all[len(t.all)-1]
}

func (b bore) alike(other bore) bool {
	if !b.diameter.Known() || !other.diameter.Known() {
		return b.text == other.text
	}
	return b.diameter.Number == other.diameter.Number
}
