package dispersal

// Where the numbers of outlets stand.
const (
	UtahEmittersSource = "Utah Administrative Code R317-401-6 (2024), Table 5"
	UtahShieldsSource  = "Utah Administrative Code R317-401-7 (2024), Table 8"
)

// utahEmitters has, for each soil of UtahTrench, the least number of emitters for a
// gallon a day and the most that one may discharge, in gallons a day.
var utahEmitters = map[string]struct{ number, discharge float64 }{
	"coarse sand or gravel":    {0.6, 1.8},
	"fine sand":                {0.7, 1.4},
	"sandy loam":               {0.9, 1.2},
	"sandy clay loam":          {1.1, 0.9},
	"clay loam":                {1.6, 0.6},
	"clay with sand or gravel": {2.0, 0.5},
}

// UtahEmitters is the least number of drip emitters for a daily flow, and the most
// that each may discharge, in m³/s, in a soil as UtahTrench words it. ok is false
// for any other soil and for a negative flow. Source: UtahEmittersSource
// (published).
func UtahEmitters(soil string, flow float64) (number int, discharge float64, ok bool) {
	row, ok := utahEmitters[soil]
	if !ok {
		return 0, 0, false
	}
	number, ok = atLeast(flow / gallonPerDay * row.number)
	if !ok {
		return 0, 0, false
	}
	return number, row.discharge * gallonPerDay, true
}

// utahShields has, for each soil of UtahMulch, the gallons a day that one mulch
// shield may take.
var utahShields = map[string]float64{"sand": 60, "loam": 40, "clay": 20}

// UtahShields is the least number of mulch shields, which are the outlets into mulch
// basins, for a daily flow in a soil as UtahMulch words it. The rule adds that a
// site may ask for less on each. ok is false for any other soil and for a negative
// flow. Source: UtahShieldsSource (published).
func UtahShields(soil string, flow float64) (number int, ok bool) {
	each, ok := utahShields[soil]
	if !ok {
		return 0, false
	}
	return atLeast(flow / gallonPerDay / each)
}
