package figures

import "greysill/checker/design"

// The kinds of part that figures tell apart.
const (
	diverter         = design.Diverter
	drainPipe        = design.DrainPipe
	surgeTank        = design.SurgeTank
	filter           = design.Filter
	plantedBed       = design.PlantedBed
	mulchBasin       = design.MulchBasin
	trench           = design.Trench
	settlingBasin    = design.SettlingBasin
	pond             = design.Pond
	spillway         = design.Spillway
	overflowPipe     = design.OverflowPipe
	stormInflow      = design.StormInflow
	sewerConnection  = design.SewerConnection
	septicConnection = design.SepticConnection
)

// The classes of water.
const (
	greywater    = "greywater"
	toiletWaste  = "toilet waste"
	kitchenWaste = "kitchen waste"
	clearWater   = "clear water"
	brine        = "brine"
)

// isWastewater reports whether a class of water is used in the house.
func isWastewater(class string) bool { return class != "" && class != clearWater }

func isGreywater(class string) bool { return class == greywater }

// wide has the kinds of feature that a point or a line says too little of to
// measure a distance from.
var wide = map[string]bool{
	"building": true, "lake": true, "pond": true, "wetland": true, "disposal field": true, "floodway": true,
	"swimming pool": true, "driveway": true, "edible garden": true, "septic tank": true, "seepage pit": true,
}

// long has the kinds of feature that a point says too little of: they go on from
// there, to one side or both.
var long = map[string]bool{
	"stream": true, "ditch": true, "public main": true, "water service": true, "retaining wall": true, "slope break": true,
}

// waterOf has the class of water of every kind of source, and of storm
// inflows.
var waterOf = map[string]string{
	"shower": greywater, "bathtub": greywater, "washbasin": greywater,
	"clothes washer": greywater, "laundry tub": greywater,
	"toilet": toiletWaste, "urinal": toiletWaste, "bidet": toiletWaste,
	"kitchen sink": kitchenWaste, "dishwasher": kitchenWaste,
	"softener backwash": brine,
	"sump pump":         clearWater, "foundation drain": clearWater, "roof drain": clearWater,
	"condensate drain": clearWater, stormInflow: clearWater,
}

// laundry has the kinds of source whose greywater is counted as laundry; all
// other greywater is counted as bathing.
var laundry = map[string]bool{"clothes washer": true, "laundry tub": true}

// What a part does with greywater.
const (
	tank    = "tank"
	field   = "field"
	pipe    = "pipe"
	fitting = "fitting"
)

// worksOf has the works of every kind of part that is not a mere fitting.
var worksOf = map[string]string{
	surgeTank: tank, filter: tank,
	plantedBed: field, mulchBasin: field, trench: field, settlingBasin: field, pond: field,
	drainPipe: pipe, overflowPipe: pipe,
}

func works(kind string) string {
	if w, known := worksOf[kind]; known {
		return w
	}
	return fitting
}

// inTrain reports whether a kind of part stores, treats or takes up greywater.
func inTrain(kind string) bool { return works(kind) == tank || works(kind) == field }

// takesUp reports whether a kind of part lets water into mulch or soil for
// good.
func takesUp(kind string) bool { return kind == mulchBasin || kind == trench }

func never(string) bool { return false }

// mayEnd reports whether a kind of part may end a way.
func mayEnd(kind string) bool { return leaves(kind) || takesUp(kind) }

// leaves reports whether water leaves the site by a kind of part.
func leaves(kind string) bool { return kind == sewerConnection || kind == septicConnection }

// holdsWater has the kinds of part that water stands in.
var holdsWater = []string{surgeTank, filter, plantedBed, settlingBasin, pond, mulchBasin, trench}
