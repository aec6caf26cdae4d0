package design

// The kinds of part, as the document has them.
const (
	Diverter         = "diverter"
	DrainPipe        = "drain pipe"
	SurgeTank        = "surge tank"
	Filter           = "filter"
	PlantedBed       = "planted gravel bed"
	MulchBasin       = "mulch basin"
	Trench           = "infiltration trench"
	SettlingBasin    = "settling basin"
	Pond             = "pond"
	Spillway         = "spillway"
	OverflowPipe     = "overflow pipe"
	StormInflow      = "storm inflow"
	SewerConnection  = "sewer connection"
	SepticConnection = "septic connection"
)
