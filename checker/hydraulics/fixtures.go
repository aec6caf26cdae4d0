package hydraulics

// Fixture is a plumbing fixture that drains.
type Fixture string

// The fixtures that a house has.
const (
	BarSink       Fixture = "bar sink"
	Bathtub       Fixture = "bathtub"
	BathroomGroup Fixture = "bathroom group"
	ClothesWasher Fixture = "clothes washer"
	Dishwasher    Fixture = "dishwasher"
	KitchenSink   Fixture = "kitchen sink"
	LaundryTub    Fixture = "laundry tub"
	Shower        Fixture = "shower"
	Washbasin     Fixture = "washbasin"
	Toilet        Fixture = "toilet" // of 1.6 gal (6 L) a flush
)

// FixtureUnits says how many drainage fixture units (DFU) one code counts for
// each fixture of a dwelling. A unit is a weight in that code's own tables, not
// a flow, and doesn't carry over to another code.
type FixtureUnits struct {
	Source Source
	units  map[Fixture]int
}

// Of gives a fixture's units; ok is false where the source has none.
func (f FixtureUnits) Of(fixture Fixture) (units int, ok bool) {
	units, ok = f.units[fixture]
	return units, ok
}

// The codes' fixture units. They differ: a clothes washer is 2 in one and 3 in
// the other.
var (
	IPCFixtureUnits = FixtureUnits{Source{"International Plumbing Code, Table 709.1, private", FromMemory}, map[Fixture]int{
		Bathtub: 2, Washbasin: 1, Shower: 2, ClothesWasher: 2, LaundryTub: 2, KitchenSink: 2, Dishwasher: 2, Toilet: 3, BathroomGroup: 5}}
	UPCFixtureUnits = FixtureUnits{Source{"Uniform Plumbing Code, Table 702.1, as adopted in King County, Washington", Published}, map[Fixture]int{
		BarSink: 1, Bathtub: 2, ClothesWasher: 3, Dishwasher: 2, KitchenSink: 2, LaundryTub: 2, Washbasin: 1, Shower: 2, Toilet: 3}}
)

// gallonPerMinute is 1 US gal/min in m³/s: 231 in³ in 60 s, exact.
const gallonPerMinute = 231 * inch * inch * inch / 60

const inch = 0.0254 // m, exact

// UnitFlow is the continuous flow, m³/s, that a code counts as one drainage
// fixture unit, for pumps and other discharges that go on and on.
type UnitFlow struct {
	PerUnit float64
	Source  Source
}

// The codes' flows for one unit. They disagree by a factor of two.
var (
	ChicagoUnitFlow = UnitFlow{gallonPerMinute, Source{"Chicago Plumbing Code, 18-29-709.3: 1 gpm is 1 DFU", Published}}
	IPCUnitFlow     = UnitFlow{gallonPerMinute / 2, Source{"International Plumbing Code, 709.3: 1 gpm is 2 DFU", FromMemory}}
)

// Units is how many fixture units a continuous flow in m³/s counts for, not
// rounded. The flow may be 0 and no less.
func (u UnitFlow) Units(flow float64) (float64, error) {
	return valid(flow/u.PerUnit, notNegative("flow", flow))
}

// IntermittentFlowSource is the table of flows that come now and then.
const IntermittentFlowSource = "Uniform Plumbing Code, 702.2: up to 7.5 gpm 1 DFU, 8 to 15 gpm 2, 16 to 30 gpm 4, 31 to 50 gpm 6 (from memory)"

// IntermittentUnits is how many fixture units the Uniform Plumbing Code counts
// for a flow in m³/s that comes now and then, such as a clothes washer's pump. ok
// is false for a negative flow and above the table's end, 50 gal/min. A flow
// between two rows takes the upper one.
func IntermittentUnits(flow float64) (units int, ok bool) {
	if notNegative("flow", flow) != nil {
		return 0, false
	}
	for _, row := range []struct {
		upTo  float64
		units int
	}{{7.5, 1}, {15, 2}, {30, 4}, {50, 6}} {
		if flow <= row.upTo*gallonPerMinute*tableSlack {
			return row.units, true
		}
	}
	return 0, false
}

// tableSlack lets a value that was converted from a table's own unit stand on
// the row that it came from.
const tableSlack = 1 + 1e-9
