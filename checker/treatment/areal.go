package treatment

import "greysill/checker/internal/bounds"

// Areal is a set of constants for removal by plan area.
type Areal struct {
	Name            string
	Of              Constituent
	Rate            Range   // m/s, at 20 °C where Theta corrects it; Typical is what the formulas use
	Theta           float64 // temperature coefficient, 1 where the source finds no effect, 0 where none is recorded here
	Background      float64 // C* in kg/m³, for coliforms in counts per m³
	BackgroundShare float64 // of the inlet concentration, added to C*
	Tanks           float64 // P, 0 for plug flow
	InletLeast      float64 // kg/m³, where the set holds for a band of inlet concentrations
	InletMost       float64 // 0 where it has no upper end
	Origin
}

// More constituents, which only these sets know.
const (
	OrganicNitrogen  Constituent = "organic nitrogen"
	Ammonium         Constituent = "ammonium nitrogen"
	Nitrate          Constituent = "nitrate nitrogen"
	KjeldahlNitrogen Constituent = "Kjeldahl nitrogen"
	FecalColiforms   Constituent = "fecal coliforms" // counts per m³
)

// Areals lists the areal sets of horizontal-flow gravel beds, and one of a
// vertical-flow bed that is named so.
var Areals = []Areal{
	{Name: "UN-HABITAT 2008, horizontal flow", Of: BOD5, Rate: only(0.15 / day), Origin: unHabitat2008},
	{Name: "UN-HABITAT 2008, vertical flow", Of: BOD5, Rate: only(0.20 / day), Origin: unHabitat2008},
	{Name: "Kickuth", Of: BOD5, Rate: only(1 / (5.2 * day)), Origin: Origin{"Kickuth's root-zone equation A = 5.2·Q·ln(C0/Ce)", FromMemory}},
	{Name: "EC/EWPCA 1990", Of: BOD5, Rate: only(0.1 / day), Origin: Origin{"EC/EWPCA, European Design and Operations Guidelines for Reed Bed Treatment Systems (1990)", FromMemory}},
	{Name: "Nurmahomed 2022, greywater in the tropics", Of: BOD5, Rate: Range{0.43 / day, 0.34 / day, 0.50 / day},
		Origin: Origin{"Nurmahomed et al., Bioresource Technology Reports 17 (2022) 100930, abstract", Published}},

	// Kadlec & Wallace withdrew this BOD rate in 2009 as far too high.
	{Name: "Kadlec & Knight 1996", Of: BOD5, Rate: only(180 / year), Theta: 1.00, Background: 3.5 * milligramPerL, BackgroundShare: 0.053, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: TSS, Rate: only(1000 / year), Background: 7.8 * milligramPerL, BackgroundShare: 0.063, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: OrganicNitrogen, Rate: only(35 / year), Theta: 1.05, Background: 1.5 * milligramPerL, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: Ammonium, Rate: only(34 / year), Theta: 1.04, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: Nitrate, Rate: only(50 / year), Theta: 1.09, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: Nitrogen, Rate: only(27 / year), Theta: 1.05, Background: 1.5 * milligramPerL, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: Phosphorus, Rate: only(12 / year), Theta: 1.00, Background: 0.02 * milligramPerL, Origin: kadlecKnight1996},
	{Name: "Kadlec & Knight 1996", Of: FecalColiforms, Rate: only(95 / year), Theta: 1.00, Background: 10 * per100mL, Origin: kadlecKnight1996},

	{Name: "Kadlec & Wallace 2009, BOD 3 to 30 mg/L", Of: BOD5, Rate: only(86 / year), Theta: 0.981, Background: 1 * milligramPerL, Tanks: 3, InletLeast: 3 * milligramPerL, InletMost: 30 * milligramPerL, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009, BOD 30 to 100 mg/L", Of: BOD5, Rate: only(37 / year), Theta: 0.981, Background: 5 * milligramPerL, Tanks: 3, InletLeast: 30 * milligramPerL, InletMost: 100 * milligramPerL, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009, BOD 100 to 200 mg/L", Of: BOD5, Rate: only(25 / year), Theta: 0.981, Background: 10 * milligramPerL, Tanks: 3, InletLeast: 100 * milligramPerL, InletMost: 200 * milligramPerL, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009, BOD above 200 mg/L", Of: BOD5, Rate: only(66 / year), Theta: 0.981, Background: 15 * milligramPerL, Tanks: 3, InletLeast: 200 * milligramPerL, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009", Of: Ammonium, Rate: only(11.4 / year), Tanks: 6, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009", Of: Nitrogen, Rate: only(8.4 / year), Tanks: 6, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009", Of: KjeldahlNitrogen, Rate: only(9.1 / year), Tanks: 6, Origin: kadlecWallace2009},
	{Name: "Kadlec & Wallace 2009", Of: Nitrate, Rate: only(41.8 / year), Tanks: 8, Origin: kadlecWallace2009},
}

const per100mL = 1e4 // per m³

var (
	kadlecKnight1996  = Origin{"Kadlec & Knight, Treatment Wetlands (1996), subsurface-flow constants", FromMemory}
	kadlecWallace2009 = Origin{"Kadlec & Wallace, Treatment Wetlands, 2nd ed. (2009), ch. 8 and following, medians of horizontal-flow beds", FromMemory}
)

// Corrected says whether RateAt corrects for temperature. Where it does not,
// a cold bed may do worse than the set says.
func (a Areal) Corrected() bool { return a.Theta != 0 }

// RateAt gives the rate in m/s at a water temperature in °C, 0 to 45; the rate
// as the source gives it where no coefficient is recorded, as Corrected says.
func (a Areal) RateAt(celsius float64) (float64, error) {
	if !a.Corrected() {
		return bounds.Result(a.Rate.Typical, liquid(celsius))
	}
	return AtTemperature(a.Rate.Typical, a.Theta, celsius)
}

// Holds says whether the set is meant for an inlet concentration in kg/m³.
func (a Areal) Holds(inlet float64) bool {
	return inlet >= a.InletLeast && (a.InletMost == 0 || inlet <= a.InletMost)
}

// Effluent gives the effluent concentration in kg/m³ from the inlet's, the
// hydraulic loading in m/s and the water temperature in °C. An inlet outside the
// set's band or below its background is an error.
func (a Areal) Effluent(inlet, loading, celsius float64) (float64, error) {
	rate, background, err := a.at(inlet, celsius)
	if err != nil {
		return 0, err
	}
	if a.Tanks == 0 {
		return KCStar(inlet, background, rate, loading)
	}
	return PKCStar(inlet, background, rate, loading, a.Tanks)
}

// Area gives the plan area in m² for an effluent in kg/m³ from the flow in m³/s,
// the inlet concentration and the water temperature in °C. An effluent at or
// below the set's background is an error: no area gives it.
func (a Areal) Area(flow, inlet, effluent, celsius float64) (float64, error) {
	rate, background, err := a.at(inlet, celsius)
	if err != nil {
		return 0, err
	}
	if a.Tanks == 0 {
		return KCStarArea(flow, inlet, effluent, background, rate)
	}
	return PKCStarArea(flow, inlet, effluent, background, rate, a.Tanks)
}

func (a Areal) at(inlet, celsius float64) (rate, background float64, err error) {
	if !a.Holds(inlet) {
		return 0, 0, a.outside(inlet)
	}
	rate, err = a.RateAt(celsius)
	return rate, a.Background + a.BackgroundShare*inlet, err
}

func (a Areal) outside(inlet float64) error {
	most := a.InletMost
	if most == 0 {
		most = bounds.Huge
	}
	return bounds.Refuse(bounds.Given("inlet concentration for "+a.Name, inlet, a.InletLeast, most, "kg/m³"))
}
