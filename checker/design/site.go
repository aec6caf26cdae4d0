package design

import "greysill/checker/quantity"

// Point is a place in plan, in metres on the site's grid.
type Point struct{ X, Y float64 }

// Spot is a spot level: a place and the ground level there, in metres.
type Spot struct{ X, Y, Z float64 }

// Site is the ground that the system is built on.
type Site struct {
	Grid     Grid      `json:"grid"`
	Boundary []Point   `json:"boundary"` // ring of corners, the first not repeated
	Levels   []Spot    `json:"levels"`
	Soil     *Soil     `json:"soil"`
	Climate  *Climate  `json:"climate"`
	Features []Feature `json:"features"`
	Services []Service `json:"services"`

	LookedForWithin *Surroundings `json:"looked_for_within"`
}

// Surroundings says how far round the site things were looked for.
type Surroundings struct {
	Wells        quantity.Quantity `json:"wells" dimension:"length"`
	SurfaceWater quantity.Quantity `json:"surface_water" dimension:"length"`
}

// Grid says what the coordinates mean.
type Grid struct {
	Unit  string            `json:"unit"`                    // ft or m, for every coordinate and spot level
	North quantity.Quantity `json:"north" dimension:"angle"` // from the y axis clockwise to north
	Datum string            `json:"datum"`                   // what level 0 is
}

// Soil is the soil as tested.
type Soil struct {
	Texture          string            `json:"texture"`
	Percolation      quantity.Quantity `json:"percolation" dimension:"percolation"`
	GroundwaterDepth quantity.Quantity `json:"groundwater_depth" dimension:"length"` // least in the year
	BedrockDepth     quantity.Quantity `json:"bedrock_depth" dimension:"length"`
	Tests            []SoilTest        `json:"tests"`
}

// SoilTest is one test hole or pit.
type SoilTest struct {
	ID    string            `json:"id"`
	Kind  string            `json:"kind"` // percolation test, test pit, boring
	At    *Point            `json:"at"`
	Date  string            `json:"date"`
	Depth quantity.Quantity `json:"depth" dimension:"length"`
}

// Climate is the weather that the design has to bear.
type Climate struct {
	FrostDepth            quantity.Quantity `json:"frost_depth" dimension:"length"`
	FreezingMonths        *[]string         `json:"freezing_months"` // jan … dec; nil when not given, empty when none freezes
	FreezingIndex         quantity.Quantity `json:"freezing_index" dimension:"degree days"`
	MeanAnnualTemperature quantity.Quantity `json:"mean_annual_temperature" dimension:"temperature"`
	SnowDepth             quantity.Quantity `json:"snow_depth" dimension:"length"` // lasting cover in the cold season
	DesignStorm           *Storm            `json:"design_storm"`
	Months                []Month           `json:"months"`
}

// Storm is the storm that overflows and spillways are sized for.
type Storm struct {
	Intensity    quantity.Quantity `json:"intensity" dimension:"rain rate"`
	Duration     quantity.Quantity `json:"duration" dimension:"time span"`
	Depth        quantity.Quantity `json:"depth" dimension:"length"`
	ReturnPeriod quantity.Quantity `json:"return_period" dimension:"time span"` // written yr
}

// Month is one month's mean weather.
type Month struct {
	Month              string            `json:"month"` // jan … dec
	MeanTemperature    quantity.Quantity `json:"mean_temperature" dimension:"temperature"`
	MinimumTemperature quantity.Quantity `json:"minimum_temperature" dimension:"temperature"`
	MaximumTemperature quantity.Quantity `json:"maximum_temperature" dimension:"temperature"`
	Rain               quantity.Quantity `json:"rain" dimension:"length"`         // in the month
	ReferenceET        quantity.Quantity `json:"reference_et" dimension:"length"` // in the month
	Humidity           quantity.Quantity `json:"humidity" dimension:"share"`
	Wind               quantity.Quantity `json:"wind" dimension:"velocity"`       // at 2 m
	Sunshine           quantity.Quantity `json:"sunshine" dimension:"time span"`  // a day
	Radiation          quantity.Quantity `json:"radiation" dimension:"radiation"` // on the level, a day
}

// Shape is where a thing lies in plan: exactly one of a point, a line and a
// ring of corners.
type Shape struct {
	At      *Point  `json:"at"`
	Path    []Point `json:"path"`
	Outline []Point `json:"outline"`
}

// Feature is a thing on or near the site that the design must heed.
type Feature struct {
	ID   string `json:"id"`
	Kind string `json:"kind"`
	Shape
	Public  *bool             `json:"public"` // of a well
	Grouted *bool             `json:"grouted"`
	Depth   quantity.Quantity `json:"depth" dimension:"length"`
	Height  quantity.Quantity `json:"height" dimension:"length"` // of a wall or break
	Species string            `json:"species"`
	Note    string            `json:"note"`

	Pointer string `json:"-"` // where it stands in the document
}

// Service is a buried line.
type Service struct {
	ID   string `json:"id"`
	Kind string `json:"kind"` // line voltage, low voltage, gas, water, telecom, sewer, irrigation
	Shape
	Depth        quantity.Quantity `json:"depth" dimension:"length"` // from the ground to its top
	Diameter     quantity.Quantity `json:"diameter" dimension:"length"`
	Located      *bool             `json:"located"` // found on the ground and marked
	WiringMethod string            `json:"wiring_method"`
	Private      *bool             `json:"private"` // the owner's own line, which the utilities do not mark
	Note         string            `json:"note"`

	Pointer string `json:"-"`
}
