package figures

import (
	"strings"

	"greysill/checker/design"
	"greysill/checker/quantity"
)

var planTable = tabulate(
	List{Name: "plan", Doc: "What the document says of itself and of the site: always one item.", Subject: "the plan"},
	func(d *drawing) []*drawing { return []*drawing{d} },
	func(*drawing) Subject { return Subject{Name: "the plan", Pointers: []string{""}} },
	[]column[*drawing]{
		{Field{Name: "prepared_by", Kind: Text, Doc: "Who drew it, by role."}, func(d *drawing) Value { return written("/prepared/role", "role of who prepared it", d.Prepared.Role) }},
		{Field{Name: "prepared_on", Kind: Text, Doc: "The day of this revision."}, func(d *drawing) Value { return written("/prepared/date", "date of the plan", d.Prepared.Date) }},
		{Field{Name: "datum", Kind: Text, Doc: "What its levels hang on."}, func(d *drawing) Value { return written("/site/grid/datum", "datum of the grid", d.Site.Grid.Datum) }},
		{Field{Name: "shows_north", Kind: Truth, Doc: "Whether it says where north is."}, func(d *drawing) Value { return truth(d.Site.Grid.North.Given()) }},
		{Field{Name: "shows_services", Kind: Truth, Doc: "Whether it lists the buried services, or that there are none."}, func(d *drawing) Value { return truth(d.Site.Services != nil) }},
		{Field{Name: "shows_house", Kind: Truth, Doc: "Whether a building is drawn."},
			func(d *drawing) Value { return truth(len(only(d.features, "building")) > 0) }},
		{Field{Name: "shows_water_service", Kind: Truth, Doc: "Whether the house's water service is drawn, as a feature or as a buried water line."},
			func(d *drawing) Value { return truth(len(waterService(d)) > 0) }},
		{Field{Name: "soaks_away", Kind: Truth, Doc: "Whether any part lets water into the soil: a mulch basin or an infiltration trench."},
			func(d *drawing) Value { return truth(len(d.ofKind(mulchBasin, trench)) > 0) }},
		{Field{Name: "soil_tests", Kind: Number, Dimension: quantity.Number, Doc: "Test holes and pits drawn.", Formula: "count"}, (*drawing).soilTests},
		{Field{Name: "wells_shown_within", Kind: Number, Dimension: quantity.Length, Doc: "How far round the site wells and springs were looked for; all that were found are drawn."},
			func(d *drawing) Value {
				return d.lookedFor("wells", func(s *design.Surroundings) quantity.Quantity { return s.Wells })
			}},
		{Field{Name: "surface_water_shown_within", Kind: Number, Dimension: quantity.Length, Doc: "How far round the site streams, lakes, ponds and lagoons were looked for; all that were found are drawn."},
			func(d *drawing) Value {
				return d.lookedFor("surface_water", func(s *design.Surroundings) quantity.Quantity { return s.SurfaceWater })
			}},
		{Field{Name: "operator", Kind: Text, Doc: "Who runs the system, by role."}, (*drawing).operator},
	},
)

// written is a text of the document.
func written(pointer, entry, content string) Value {
	if strings.TrimSpace(content) == "" {
		return unknown(Lack{pointer, entry})
	}
	return text(content, Input{Name: entry, Pointer: pointer})
}

func (d *drawing) soilTests() Value {
	if d.Site.Soil == nil {
		return number(0)
	}
	return number(float64(len(d.Site.Soil.Tests)))
}

func (d *drawing) lookedFor(entry string, of func(*design.Surroundings) quantity.Quantity) Value {
	pointer := "/site/looked_for_within/" + entry
	if d.Site.LookedForWithin == nil || !of(d.Site.LookedForWithin).Given() {
		return unknown(Lack{pointer, entry + " under looked_for_within of the site"})
	}
	return number(of(d.Site.LookedForWithin).Value, Input{Name: "looked for within", Pointer: pointer})
}

func (d *drawing) operator() Value {
	name := ""
	if d.Operation != nil {
		name = d.Operation.Operator
	}
	return written("/operation/operator", "operator of the system", name)
}
