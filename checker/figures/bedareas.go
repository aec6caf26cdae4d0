package figures

import (
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var bedAreaTable = tabulate(
	List{Name: "bed_areas", Subject: "a planted gravel bed with a basis",
		Doc: "The area that every planted gravel bed wants by every published basis that is meant for so strong an inlet. The bases lie fifty times apart; none is a default."},
	(*drawing).wanting, (*wanting).subject,
	[]column[*wanting]{
		{Field{Name: "bed", Kind: Text, Doc: "The bed's id."}, func(w *wanting) Value { return text(w.ID) }},
		{Field{Name: "basis", Kind: Text, Doc: "The basis."}, func(w *wanting) Value { return text(w.basis.Name) }},
		{Field{Name: "source", Kind: Text, Doc: "Where the basis comes from."}, func(w *wanting) Value { return text(w.basis.Source) }},
		{Field{Name: "standing", Kind: Text, Doc: "How the basis is known.", Words: standings}, func(w *wanting) Value { return text(w.basis.Standing) }},
		{Field{Name: "model", Kind: Text, Doc: "How the basis works the area out."}, func(w *wanting) Value { return text(w.basis.Formula) }},
		{Field{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of the bed in plan.",
			Formula: "½ Σ (x₁y₂ − x₂y₁) round the outline"}, func(w *wanting) Value { return w.running.area() }},
		{Field{Name: "least_wanted", Kind: Number, Dimension: quantity.Area,
			Doc:     "Least area wanted, for an effluent of 30 mg/L of BOD5 where the basis takes one.",
			Formula: bedAreaFormula}, func(w *wanting) Value { return w.least }},
		{Field{Name: "greatest_wanted", Kind: Number, Dimension: quantity.Area,
			Doc:     "Greatest area wanted, for an effluent of 30 mg/L of BOD5 where the basis takes one.",
			Formula: bedAreaFormula}, func(w *wanting) Value { return w.greatest }},
		{Field{Name: "least_ratio", Kind: Number, Dimension: quantity.Number, Doc: "Area given for each unit of the greatest area wanted.",
			Formula: "area ÷ greatest area wanted"}, func(w *wanting) Value { return w.ratio(w.greatest) }},
		{Field{Name: "greatest_ratio", Kind: Number, Dimension: quantity.Number, Doc: "Area given for each unit of the least area wanted.",
			Formula: "area ÷ least area wanted"}, func(w *wanting) Value { return w.ratio(w.least) }},
	},
)

const bedAreaFormula = "by the model, over the least and greatest inlet, porosity, and mean temperature of the months in which the bed runs: " +
	"Q the flow, Ci the inlet's BOD5, Ce 30 mg/L, k the rate at the temperature, C* the background, P the tanks, y the depth of water, n the porosity"

// wantedEffluent is the BOD5 in kg/m³ that the areas are worked out for: a basis
// of comparison.
const wantedEffluent = 0.030

var sizingBases = treatment.Bases()

// wanting is a bed with one basis of its area.
type wanting struct {
	*running
	basis           *treatment.Basis
	least, greatest Value
}

func (d *drawing) wanting() []*wanting {
	warmest, coldest := d.waterTemperatures()
	var all []*wanting
	for _, r := range d.running() {
		given := r.sizing(warmest, coldest)
		for i := range sizingBases {
			basis := &sizingBases[i]
			if weak, strong, meant := inletOf(basis, r); meant {
				w := &wanting{running: r, basis: basis}
				w.least, w.greatest = given.by(basis, weak.Number, strong.Number)
				all = append(all, w)
			}
		}
	}
	return all
}

func (w *wanting) subject() Subject {
	return Subject{w.ID + ", " + w.basis.Name, []string{w.ID}, []string{w.Pointer}}
}

func (w *wanting) ratio(wanted Value) Value {
	area := w.running.area()
	return worked(w.lack("outline"), func() (float64, error) { return area.Number / wanted.Number, nil }, area, wanted)
}

// inletOf gives the least and greatest BOD5 that a basis is meant for.
func inletOf(basis *treatment.Basis, r *running) (weak, strong Value, meant bool) {
	if set := removalOf(basis.Name); set != nil {
		return set.inlet(r)
	}
	return r.weakest.bod, r.strongest.bod, true
}
