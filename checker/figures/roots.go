package figures

import (
	"fmt"

	"greysill/checker/design"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var rootTable = tabulate(
	List{Name: "roots", Doc: "Every planting of every planted gravel bed.", Subject: "a planting"},
	(*drawing).rootings, (*rooting).subject,
	[]column[*rooting]{
		{Field{Name: "bed", Kind: Text, Doc: "The bed's id."}, func(r *rooting) Value { return text(r.ID) }},
		{Field{Name: "species", Kind: Text, Doc: "What is planted."},
			func(r *rooting) Value { return text(r.Species, Input{Name: "species", Pointer: r.pointer("species")}) }},
		{Field{Name: "plant", Kind: Text, Words: plantWords,
			Doc:     "Which of the plants it is that take over wet land where they are not native.",
			Formula: "by its botanical or common name", Source: spreading}, (*rooting).plant},
		{Field{Name: "country", Kind: Text, Doc: "The country of the site, by the first two letters of its region."}, (*rooting).country},
		{Field{Name: "least_root_depth", Kind: Number, Dimension: quantity.Length, Doc: "Least depth of the roots: as drawn, else the least that a source gives for the species.",
			Formula: rootFormula, Source: rootSources}, func(r *rooting) Value { return r.roots.least }},
		{Field{Name: "greatest_root_depth", Kind: Number, Dimension: quantity.Length,
			Doc:     "Greatest depth of the roots: as drawn, else the greatest that a source gives for the species.",
			Formula: rootFormula, Source: rootSources}, func(r *rooting) Value { return r.roots.greatest }},
		{Field{Name: "root_depth_source", Kind: Text, Doc: "Whether the depth is drawn, else which source gives it."}, func(r *rooting) Value { return r.roots.source }},
		{Field{Name: "least_media_depth", Kind: Number, Dimension: quantity.Length, Doc: "Least depth of media of the bed.",
			Formula: depthFormula}, func(r *rooting) Value { return r.leastDepth() }},
		{Field{Name: "least_ratio", Kind: Number, Dimension: quantity.Number, Doc: "Least depth of the roots for each unit of the least depth of media; above 1 they reach the bottom.",
			Formula: "root depth ÷ least depth of media"}, func(r *rooting) Value { return r.ratio(r.roots.least) }},
		{Field{Name: "greatest_ratio", Kind: Number, Dimension: quantity.Number, Doc: "Greatest depth of the roots for each unit of the least depth of media; above 1 they reach the bottom.",
			Formula: "root depth ÷ least depth of media"}, func(r *rooting) Value { return r.ratio(r.roots.greatest) }},
	},
)

// rootColumns are the figures of a bed's plants all together.
var rootColumns = []column[*bed]{
	{Field{Name: "root_depth", Kind: Number, Dimension: quantity.Length,
		Doc:     "Depth of the roots of the deepest-rooted planting: of each as drawn, else the least that a source gives for the species.",
		Formula: "greatest of the plantings", Source: rootSources}, (*bed).deepestRoots},
	{Field{Name: "root_reach", Kind: Number, Dimension: quantity.Number, Doc: "Depth of those roots for each unit of the mean depth of media; from 1 on they reach the floor.",
		Formula: "root depth ÷ mean depth of media"}, (*bed).rootReach},
}

// plantWords are the plants that are told apart where they are not native.
var plantWords = append(treatment.SpreadingPlants(), anotherPlant)

const anotherPlant = "another plant"

const rootFormula = "as drawn, else by the species from the published depths"

var spreading = Citation{Title: treatment.SpreadingSource, Standing: FromMemory}

var rootSources = Citation{Title: "Published depths of roots in wet gravel; the source of each value is named beside it", Standing: FromMemory}

// rooting is one planting of a bed.
type rooting struct {
	*bed
	*design.Planting
	number int // in the order of the document, from 0
	roots  estimate
}

func (d *drawing) rootings() []*rooting {
	var all []*rooting
	for _, b := range d.beds() {
		all = append(all, b.rootings()...)
	}
	return all
}

func (b *bed) rootings() []*rooting {
	all := make([]*rooting, len(b.Plants))
	for i := range b.Plants {
		all[i] = &rooting{bed: b, Planting: &b.Plants[i], number: i}
		all[i].roots = all[i].depth()
	}
	return all
}

func (b *bed) deepestRoots() Value {
	plantings := b.rootings()
	if len(plantings) == 0 {
		return unknown(b.lack("plants"))
	}
	depths, deepest := make([]Value, len(plantings)), 0.0
	for i, r := range plantings {
		depths[i] = r.roots.least
		deepest = max(deepest, r.roots.least.Number)
	}
	return outOf(deepest, depths...)
}

func (b *bed) rootReach() Value {
	roots, media := b.deepestRoots(), b.meanDepth()
	if media.Known() && media.Number <= geometry.Resolution {
		media = unknown(Lack{b.Pointer + "/floor", "floor of " + b.ID + " everywhere below the surface of its media"})
	}
	return outOf(roots.Number/media.Number, roots, media)
}

func (r *rooting) plant() Value {
	named := treatment.SpreadingPlant(r.Species)
	if named == "" {
		named = anotherPlant
	}
	return text(named, Input{Name: "species", Pointer: r.pointer("species")})
}

func (r *rooting) country() Value {
	region := r.drawing.Location.Region
	return text(region[:2], Input{Name: "region", Pointer: "/location/region"})
}

func (r *rooting) subject() Subject {
	return Subject{fmt.Sprintf("%s planting %d", r.ID, r.number+1), []string{r.ID}, []string{r.Pointer}}
}

func (r *rooting) pointer(entry string) string {
	return member(r.Pointer+"/plants", r.number) + "/" + entry
}

func (r *rooting) depth() estimate {
	if r.RootDepth.Given() {
		return asDrawn(number(r.RootDepth.Value, Input{Name: "root depth", Pointer: r.pointer("root_depth")}))
	}
	known := treatment.RootDepthsOf(r.Species)
	if len(known) == 0 {
		v := unknown(Lack{r.pointer("root_depth"), fmt.Sprintf("root_depth of planting %d of %s", r.number+1, r.ID)})
		return estimate{v, v, v}
	}
	least, greatest := known[0], known[0]
	for _, k := range known[1:] {
		if k.Depth < least.Depth {
			least = k
		}
		if k.Depth > greatest.Depth {
			greatest = k
		}
	}
	species := Input{Name: "species", Pointer: r.pointer("species")}
	return estimate{number(least.Depth, species), number(greatest.Depth, species),
		text("least: "+rootsSaidBy(least)+"; greatest: "+rootsSaidBy(greatest), species)}
}

func rootsSaidBy(d treatment.RootDepth) string {
	said := d.Source + " (" + d.Standing + ")"
	if d.AtLeast {
		return said + ", at least so deep"
	}
	return said
}

func (r *rooting) ratio(roots Value) Value {
	media := r.leastDepth()
	if media.Known() && media.Number <= geometry.Resolution {
		media = unknown(Lack{r.Pointer + "/floor", "floor of " + r.ID + " everywhere below the surface of its media"})
	}
	return worked(r.lack("floor"), func() (float64, error) { return roots.Number / media.Number, nil }, roots, media)
}
