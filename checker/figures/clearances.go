package figures

import (
	"math"
	"slices"

	"greysill/checker/design"
	"greysill/checker/quantity"
)

// clearanceTables has one list for each group of things that rules keep clear
// of.
var clearanceTables = []table{
	clearance("well", "wells and springs", features("well", "spring"), serves, casing),
	clearance("surface_water", "streams, lakes, ponds that are there already, wetlands", features("stream", "lake", "pond", "wetland")),
	clearance("building", "buildings", features("building")),
	clearance("property_line", "the boundary, measured from the inside; 0 when on or over it", propertyLine),
	clearance("septic_tank", "septic tanks", features("septic tank")),
	clearance("disposal_field", "sewage disposal fields and seepage pits", features("disposal field", "seepage pit")),
	clearance("water_service", "the house's water service, drawn as a feature or as a buried water line", waterService),
	clearance("public_main", "public water mains", features("public main")),
	clearance("ground", "retaining walls and slope breaks", features("retaining wall", "slope break")),
	clearance("tree", "trees", features("tree")),
	clearance("edible_garden", "edible gardens", features("edible garden")),
	clearance("paving", "driveways and other paving", features("driveway")),
	clearance("drainage", "neighbours' drains, storm drains and ditches", features("neighbour's drain", "storm drain", "ditch")),
	clearance("floodway", "floodways", features("floodway")),
	clearance("pool", "swimming pools", features("swimming pool")),
	clearance("buried_line", "every buried service", func(d *drawing) []thing { return d.services }),
}

// What is said of wells and springs alone.
var (
	serves = column[pair]{
		Field{Name: "serves", Kind: Text, Doc: "Whom the well or spring serves, as stated.", Words: []string{"the public", "a household"}},
		func(p pair) Value {
			return p.wellhead("public", func(f *design.Feature) *bool { return f.Public }, "the public", "a household")
		},
	}
	casing = column[pair]{
		Field{Name: "casing", Kind: Text, Doc: "Whether its casing is sealed with grout against water from the surface, as stated.",
			Words: []string{"grouted", "not grouted"}},
		func(p pair) Value {
			return p.wellhead("grouted", func(f *design.Feature) *bool { return f.Grouted }, "grouted", "not grouted")
		},
	}
)

// wellhead words a yes or no that is stated of a well or spring.
func (p pair) wellhead(entry string, says func(*design.Feature) *bool, ifSo, ifNot string) Value {
	features := p.part.drawing.Site.Features
	f := &features[slices.IndexFunc(features, func(f design.Feature) bool { return f.Pointer == p.thing.pointer })]
	v := stated(says(f), p.thing.pointer, entry, p.thing.id)
	switch {
	case !v.Known():
		return v
	case *says(f):
		return text(ifSo, v.Inputs...)
	}
	return text(ifNot, v.Inputs...)
}

func clearance(name, what string, things func(*drawing) []thing, more ...column[pair]) table {
	rows := func(d *drawing) []pair { return pairs(d.parts, things(d)) }
	return tabulate(
		List{Name: "clearances." + name, Doc: "Every part paired with " + what + ".", Subject: "a part and what it must keep clear of"},
		rows, pair.subject,
		slices.Concat([]column[pair]{
			{Field{Name: "part", Kind: Text, Doc: "The part's id."}, func(p pair) Value { return text(p.part.ID) }},
			{Field{Name: "part_kind", Kind: Text, Doc: "The part's kind."}, func(p pair) Value { return p.part.kind() }},
			{Field{Name: "works", Kind: Text,
				Doc: "What the part does with greywater: a tank keeps it watertight, a field lets it into gravel, soil or open water, " +
					"a pipe carries it, a fitting is anything else.",
				Words: []string{tank, field, pipe, fitting}}, func(p pair) Value { return text(works(p.part.Kind)) }},
			{Field{Name: "feature", Kind: Text, Doc: "The feature's or service's id."}, func(p pair) Value { return text(p.thing.id) }},
			{Field{Name: "feature_kind", Kind: Text, Doc: "The feature's or service's kind."}, func(p pair) Value { return text(p.thing.kind) }},
			{Field{Name: "distance", Kind: Number, Dimension: quantity.Length,
				Doc: "Least distance in plan between the two, from the edge of the part, its inlet header, outlet or draw-down, or the middle line of a pipe; " +
					"0 where they touch or overlap. Of what has an extent only the outline tells it.",
				Formula: "least distance between the two shapes in plan"}, func(p pair) Value { return p.distance }},
			{Field{Name: "touches", Kind: Truth, Doc: "Whether the two touch or overlap in plan."}, pair.touches},
		}, more),
	)
}

// pair is a part with a thing that it must keep clear of.
type pair struct {
	part     *part
	thing    *thing
	distance Value
}

func pairs(parts []*part, things []thing) []pair {
	all := make([]pair, 0, len(parts)*len(things))
	for _, p := range parts {
		for i := range things {
			all = append(all, pair{p, &things[i], p.distance(&things[i])})
		}
	}
	return all
}

func (p pair) subject() Subject {
	return Subject{p.part.ID + " and " + p.thing.id, []string{p.part.ID, p.thing.id}, []string{p.part.Pointer, p.thing.pointer}}
}

func (p *part) distance(t *thing) Value {
	if lacks := append(p.unplaced(), t.unplaced()...); len(lacks) > 0 {
		return unknown(lacks...)
	}
	nearest, least := covered{}, math.Inf(1)
	for _, g := range p.grounds {
		if clear := g.clear(t); clear < least {
			nearest, least = g, clear
		}
	}
	return number(least, nearest.drawn, Input{Name: t.id, Pointer: t.lies})
}

func (p pair) touches() Value {
	return orUnknown(truth(p.distance.Number == 0, p.distance.Inputs...), p.distance.Lacks)
}

// features picks the features of some kinds.
func features(kinds ...string) func(*drawing) []thing {
	return func(d *drawing) []thing { return only(d.features, kinds...) }
}

func only(things []thing, kinds ...string) []thing {
	var found []thing
	for _, t := range things {
		if slices.Contains(kinds, t.kind) {
			found = append(found, t)
		}
	}
	return found
}

func waterService(d *drawing) []thing {
	return append(only(d.features, "water service"), only(d.services, "water")...)
}

const propertyLineKind = "property line"

func propertyLine(d *drawing) []thing {
	return []thing{{"boundary", propertyLineKind, boundaryPointer, boundaryPointer, d.boundary, true, nil}}
}
