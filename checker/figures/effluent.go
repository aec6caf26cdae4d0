package figures

import (
	"greysill/checker/quantity"
	"greysill/checker/treatment"
)

var effluentTable = tabulate(
	List{Name: "effluent", Subject: "a planted gravel bed with a basis",
		Doc: "The BOD5 that leaves every planted gravel bed, by every published set of constants that is meant for so strong an inlet. The sets disagree; none is a default."},
	(*drawing).leaving, (*leaving).subject,
	[]column[*leaving]{
		{Field{Name: "bed", Kind: Text, Doc: "The bed's id."}, func(l *leaving) Value { return text(l.ID) }},
		{Field{Name: "basis", Kind: Text, Words: removalNames(), Doc: "The set of constants."}, func(l *leaving) Value { return text(l.set.name) }},
		{Field{Name: "source", Kind: Text, Doc: "Where the constants come from."}, func(l *leaving) Value { return text(l.set.Source) }},
		{Field{Name: "standing", Kind: Text, Doc: "How the constants are known.", Words: standings}, func(l *leaving) Value { return text(l.set.Standing) }},
		{Field{Name: "model", Kind: Text, Doc: "The formula that the constants are for."}, func(l *leaving) Value { return text(l.set.model) }},
		{Field{Name: "corrected_for_temperature", Kind: Truth,
			Doc: "Whether the set corrects its rate for temperature; where it does not, a cold bed may do worse than it says."},
			func(l *leaving) Value { return truth(l.set.corrected) }},
		{Field{Name: "least_inlet", Kind: Number, Dimension: quantity.Density, Doc: "Least BOD5 that comes in, of those that the set is meant for.",
			Formula: inletFormula}, func(l *leaving) Value { return l.weak }},
		{Field{Name: "greatest_inlet", Kind: Number, Dimension: quantity.Density, Doc: "Greatest BOD5 that comes in, of those that the set is meant for.",
			Formula: inletFormula}, func(l *leaving) Value { return l.strong }},
		{Field{Name: "warm_temperature", Kind: Number, Dimension: quantity.Temperature,
			Doc:     "Temperature that the water is taken to have in the warmest month in which the bed runs.",
			Formula: "mean temperature of the month, not below 0 °C", Source: asTheAir}, func(l *leaving) Value { return l.warm }},
		{Field{Name: "cold_temperature", Kind: Number, Dimension: quantity.Temperature,
			Doc:     "Temperature that the water is taken to have in the coldest month in which the bed runs.",
			Formula: "mean temperature of the month, not below 0 °C", Source: asTheAir}, func(l *leaving) Value { return l.cold }},
		{Field{Name: "least_effluent_in_warm", Kind: Number, Dimension: quantity.Density, Doc: "Least BOD5 that leaves in the warmest month.",
			Formula: leavingFormula, Source: removalModels}, func(l *leaving) Value { return l.least(l.warm) }},
		{Field{Name: "greatest_effluent_in_warm", Kind: Number, Dimension: quantity.Density, Doc: "Greatest BOD5 that leaves in the warmest month.",
			Formula: leavingFormula, Source: removalModels}, func(l *leaving) Value { return l.greatest(l.warm) }},
		{Field{Name: "least_effluent_in_cold", Kind: Number, Dimension: quantity.Density, Doc: "Least BOD5 that leaves in the coldest month in which the bed runs.",
			Formula: leavingFormula, Source: removalModels}, func(l *leaving) Value { return l.least(l.cold) }},
		{Field{Name: "greatest_effluent_in_cold", Kind: Number, Dimension: quantity.Density, Doc: "Greatest BOD5 that leaves in the coldest month in which the bed runs.",
			Formula: leavingFormula, Source: removalModels}, func(l *leaving) Value { return l.greatest(l.cold) }},
	},
)

const (
	inletFormula   = "least and greatest BOD5 of greywater by the published strengths, as far as they lie in the set's own range"
	leavingFormula = "by the model: Ci the inlet's BOD5, Ce the effluent's, k the rate at the temperature, C* the background, P the tanks, q the hydraulic loading, t the detention"
)

var (
	removalModels = Citation{Title: treatment.PlugFlowSource + "; " + treatment.KCStarSource + "; " + treatment.TanksSource, Standing: FromMemory}
	asTheAir      = Citation{Title: "Water in a shallow bed is about as warm as the month's mean air", Standing: Practice}
)

// leaving is a bed with one set of constants.
type leaving struct {
	*running
	set          *removal
	weak, strong Value // BOD5 of the inlet
	through      estimate
	warm, cold   Value // °C
}

func (d *drawing) leaving() []*leaving {
	warmest, coldest := d.waterTemperatures()
	var all []*leaving
	for _, r := range d.running() {
		for i := range removals {
			s := &removals[i]
			if weak, strong, meant := s.inlet(r); meant {
				all = append(all, &leaving{r, s, weak, strong, s.through(r), warmest, coldest})
			}
		}
	}
	return all
}

func (l *leaving) subject() Subject {
	return Subject{l.ID + ", " + l.set.name, []string{l.ID}, []string{l.Pointer}}
}

func (l *leaving) least(celsius Value) Value { return l.left(l.weak, l.through.greatest, celsius) }

func (l *leaving) greatest(celsius Value) Value { return l.left(l.strong, l.through.least, celsius) }

// left is what the set leaves of an inlet. The temperature counts only where the
// set corrects its rate for it.
func (l *leaving) left(inlet, through, celsius Value) Value {
	if !l.set.corrected {
		celsius = number(referenceTemperature)
	}
	return worked(Lack{monthsOfYear, "mean temperatures of the site's climate"}, func() (float64, error) {
		return l.set.effluent(inlet.Number, through.Number, celsius.Number)
	}, inlet, through, celsius)
}
