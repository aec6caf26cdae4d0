package figures

import (
	"slices"

	"greysill/checker/treatment"
)

const strengthFormula = "as the source gives it; where it gives a load for each person, occupants × load ÷ daily flow of the system"

var strengthSource = Citation{Title: "Published strengths and loads of greywater; the source is named beside the value", Standing: FromMemory}

// greywaterMeasured has the waters of the strengths and loads that are
// greywater. The others are whole sewage or parts of it that no bed here takes.
var greywaterMeasured = []string{"bath, shower and washbasin", "bathing, sinks and appliances"}

// strength is a BOD5 of greywater with who says so.
type strength struct{ bod, named Value }

// strengths gives the least and the greatest BOD5 of greywater by the published
// sources.
func (d *drawing) strengths() (weakest, strongest strength) {
	if len(d.streams.lacks) > 0 {
		v := unknown(d.streams.lacks...)
		return strength{v, v}, strength{v, v}
	}
	take := func(bod float64, name string, o treatment.Origin, inputs ...Input) {
		s := strength{number(bod, inputs...), text(name + ": " + o.Source + " (" + o.Standing + ")")}
		if weakest.bod.Number == 0 || bod < weakest.bod.Number {
			weakest = s
		}
		if bod > strongest.bod.Number {
			strongest = s
		}
	}
	for _, s := range treatment.Strengths {
		if bod, measured := s.Of[treatment.BOD5]; measured && slices.Contains(greywaterMeasured, s.Water) {
			take(bod.Least, s.Name, s.Origin)
			take(bod.Most, s.Name, s.Origin)
		}
	}
	for _, l := range treatment.Loads {
		load, measured := l.Of[treatment.BOD5]
		if !measured || !slices.Contains(greywaterMeasured, l.Water) {
			continue
		}
		// Where no greywater is on the system, a load is no strength.
		if bod, err := treatment.Concentration(load*float64(occupants(d.Dwelling)), d.streams.total); err == nil {
			take(bod, l.Name, l.Origin, d.streams.inputs...)
		}
	}
	return weakest, strongest
}
