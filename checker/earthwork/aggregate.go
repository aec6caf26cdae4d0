package earthwork

// WaterDensity is the density of water, in kg/m³, as taken for specific gravities.
const WaterDensity = 1000

// poundPerCubicFoot is 0.45359237 kg in 0.3048³ m³, exact by definition.
const poundPerCubicFoot = 0.45359237 / (0.3048 * 0.3048 * 0.3048)

// Aggregate is a gravel or stone as it lies dumped, not compacted.
type Aggregate struct {
	Name     string
	Density  float64 // in bulk, dry
	Porosity float64 // share of pores, 0 where the source gives none
	Source   string
	Standing string // "published" or "common practice"
}

const testedAggregates = "laboratory values of open-graded aggregates compiled in 2011 (a test house's data)"

// Aggregates whose bulk density is known. A supplier's own figure goes before
// them.
var (
	No57Stone = Aggregate{"AASHTO No. 57, dumped", 87.2 * poundPerCubicFoot, 0.454, testedAggregates, "published"}
	No4Stone  = Aggregate{"AASHTO No. 4, dumped", 94.3 * poundPerCubicFoot, 0.399, testedAggregates, "published"}
	PeaGravel = Aggregate{"pea gravel", 111.6 * poundPerCubicFoot, 0, "figures of the trade, no source", "common practice"}
)

// Mass is the mass of a volume in bulk, ok=false for a negative volume or density.
func Mass(volume, density float64) (mass float64, ok bool) {
	return result(volume*density, volume, density)
}

// DryDensity is the bulk density of stone from the specific gravity of its grains
// and its porosity: Gs (1 − n) times the density of water. ok is false for a
// negative gravity and for a porosity outside 0 to 1. Common practice, no source.
func DryDensity(gravity, porosity float64) (density float64, ok bool) {
	return result(gravity*(1-porosity)*WaterDensity, gravity, porosity, 1-porosity)
}
