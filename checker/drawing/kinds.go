package drawing

import "greysill/checker/design"

// The kinds of part that are drawn in their own way.
const (
	diverter      = design.Diverter
	drainPipe     = design.DrainPipe
	surgeTank     = design.SurgeTank
	filter        = design.Filter
	plantedBed    = design.PlantedBed
	mulchBasin    = design.MulchBasin
	trench        = design.Trench
	settlingBasin = design.SettlingBasin
	pond          = design.Pond
	spillway      = design.Spillway
	overflowPipe  = design.OverflowPipe
	stormInflow   = design.StormInflow
)

// partClass has the line type of every kind of part that has an area, "part" of
// any other.
var partClass = map[string]string{
	plantedBed: "bed", mulchBasin: "mulch", trench: "trench", settlingBasin: "open-water", pond: "open-water",
}

// lineClass has the line type of every kind of part that is a line.
var lineClass = map[string]string{
	drainPipe: "drain", overflowPipe: "overflow", spillway: "overflow", stormInflow: "overflow", trench: "trench",
}

// thingClass has the line type of the kinds of feature that are not drawn as a
// mere object.
var thingClass = map[string]string{
	"building": "building", "stream": "water", "lake": "water", "pond": "water", "wetland": "water", "ditch": "water", "floodway": "water",
	"swimming pool": "water", "neighbour's drain": "extent", "storm drain": "extent", "disposal field": "extent", "seepage pit": "extent",
	"septic tank": "extent", "edible garden": "extent", "driveway": "thing", "retaining wall": "heavy", "slope break": "ground-form",
}

// serviceLetters has the letters that mark a buried line of each kind (common
// practice, no source; agencies differ). A feature that is a water line has
// letters too.
var serviceLetters = map[string]string{
	"line voltage": "E", "low voltage": "LV", "gas": "G", "water": "W", "telecom": "T", "sewer": "SS", "irrigation": "IR",
	"water service": "W", "public main": "PM",
}
