package hydraulics

// DrainCapacity is a code's table of the most drainage fixture units that a
// drain of a size may carry at a slope.
type DrainCapacity struct {
	Source Source
	slopes []float64 // inches per foot, rising
	rows   []capacityRow
}

type capacityRow struct {
	size   float64   // nominal diameter, in
	units  []float64 // by slope; 0 where the table has none
	source Source    // where it is not the table's
}

// MostUnits gives the most fixture units for a nominal diameter in m and a
// slope, and the source of that cell. Between sizes and slopes the smaller one
// counts, as the tables are read. ok is false for a size or slope under the
// table's, and where the table has no number.
func (c DrainCapacity) MostUnits(diameter, slope float64) (units float64, source Source, ok bool) {
	for i := len(c.rows) - 1; i >= 0; i-- {
		if row := c.rows[i]; row.size*inch <= diameter*tableSlack {
			units, ok = c.at(row, slope)
			if row.source != (Source{}) {
				return units, row.source, ok
			}
			return units, c.Source, ok
		}
	}
	return 0, Source{}, false
}

func (c DrainCapacity) at(row capacityRow, slope float64) (units float64, ok bool) {
	for i, s := range c.slopes {
		if s/12 <= slope*tableSlack {
			units = row.units[i]
		}
	}
	return units, units > 0
}

// IPCBuildingDrain is the International Plumbing Code's table for building
// drains and sewers.
var IPCBuildingDrain = DrainCapacity{
	Source: Source{"International Plumbing Code, Table 710.1(1)", FromMemory},
	slopes: []float64{1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2},
	rows: []capacityRow{
		{size: 1.25, units: []float64{0, 0, 1, 1}},
		{size: 1.5, units: []float64{0, 0, 3, 3}},
		{size: 2, units: []float64{0, 0, 21, 26}},
		{size: 2.5, units: []float64{0, 0, 24, 31}},
		{size: 3, units: []float64{0, 36, 42, 50}},
		{size: 4, units: []float64{0, 180, 216, 250}},
		{size: 5, units: []float64{0, 390, 480, 575}},
		{size: 6, units: []float64{0, 700, 840, 1000}},
		{size: 8, units: []float64{1400, 1600, 1920, 2300}},
	},
}

// IPCBranch is the International Plumbing Code's table for horizontal fixture
// branches, which counts no slope.
var IPCBranch = DrainCapacity{
	Source: Source{"International Plumbing Code, Table 710.1(2)", FromMemory},
	slopes: []float64{0},
	rows: []capacityRow{
		{size: 1.25, units: []float64{1}}, {size: 1.5, units: []float64{3}}, {size: 2, units: []float64{6}},
		{size: 2.5, units: []float64{12}}, {size: 3, units: []float64{20}}, {size: 4, units: []float64{160}},
		{size: 5, units: []float64{360}}, {size: 6, units: []float64{620}}, {size: 8, units: []float64{1400}},
	},
}

// UPCHorizontalDrain is the Uniform Plumbing Code's table for horizontal
// drains, at 1/4 in/ft and steeper.
var UPCHorizontalDrain = DrainCapacity{
	Source: Source{"Uniform Plumbing Code, Table 703.2, as adopted in King County, Washington", Published},
	slopes: []float64{1.0 / 4},
	rows:   upcRows(1),
}

// UPCReducedSlopeDrain is the same table at 1/8 in/ft and steeper, where the
// code multiplies by 0.8. It asks for the authority's consent to such a slope.
var UPCReducedSlopeDrain = DrainCapacity{
	Source: Source{"Uniform Plumbing Code, Table 703.2 with 0.8 of its numbers at 1/8 in/ft", FromMemory},
	slopes: []float64{1.0 / 8},
	rows:   upcRows(0.8),
}

func upcRows(share float64) []capacityRow {
	remembered := Source{"Uniform Plumbing Code, Table 703.2", FromMemory}
	rows := []capacityRow{
		{size: 1.25, units: []float64{1}}, {size: 1.5, units: []float64{1}}, {size: 2, units: []float64{8}},
		{size: 2.5, units: []float64{14}}, {size: 3, units: []float64{35}}, {size: 4, units: []float64{216}},
		{size: 5, units: []float64{428}, source: remembered}, {size: 6, units: []float64{720}, source: remembered},
	}
	for _, row := range rows {
		row.units[0] *= share
	}
	return rows
}
