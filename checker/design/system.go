package design

import "greysill/checker/quantity"

// Source is a fixture, or anything else that would drain in.
type Source struct {
	ID   string            `json:"id"`
	Kind string            `json:"kind"`
	To   []Outlet          `json:"to"`
	Flow quantity.Quantity `json:"flow" dimension:"flow"` // a day, as stated by the designer

	VolumePerUse  quantity.Quantity `json:"volume_per_use" dimension:"volume"`
	UsesPerDay    *float64          `json:"uses_per_day"`
	DischargeRate quantity.Quantity `json:"discharge_rate" dimension:"flow"` // while it drains
	FixtureUnits  *float64          `json:"fixture_units"`
	Level         quantity.Quantity `json:"level" dimension:"level"`    // of its outlet
	RoofArea      quantity.Quantity `json:"roof_area" dimension:"area"` // in plan, of a roof drain
	SoiledNappies *bool             `json:"soiled_nappies"`
	Hazardous     *bool             `json:"hazardous_chemicals"` // whether chemicals that poison soil or water go down it
	Note          string            `json:"note"`

	Pointer string `json:"-"`
}

// Outlet is one way that water takes: to a part or a feature, all of it or a
// share.
type Outlet struct {
	Target  string            `json:"target"`
	Share   quantity.Quantity `json:"share" dimension:"share"` // not given: an equal share of what is left
	Pointer string            `json:"-"`
}

// Part is one part of the train. Which entries a part may have depends on its
// kind; the schema says so.
type Part struct {
	ID   string `json:"id"`
	Kind string `json:"kind"`
	Shape
	To         []Outlet `json:"to"`
	OverflowTo []Outlet `json:"overflow_to"`
	BypassTo   []Outlet `json:"bypass_to"` // of a diverter: where water goes in the bypass season
	Permit     string   `json:"permit"`    // reference of a permit of its own
	Note       string   `json:"note"`

	// Of a diverter, a connection, or anything with a lid or a valve.
	Accessible        *bool `json:"accessible"`
	Labelled          *bool `json:"labelled"`
	ShowsDirection    *bool `json:"shows_direction"`
	DownstreamOfTraps *bool `json:"downstream_of_traps"`
	BackwaterValve    *bool `json:"backwater_valve"`
	AirGap            *bool `json:"air_gap"`

	MakeUp *MakeUp `json:"make_up"` // of whatever is topped up

	// Of a pipe.
	Inverts    []quantity.Quantity `json:"inverts" dimension:"level"` // one for each end, or one for each point of the path
	Diameter   quantity.Quantity   `json:"diameter" dimension:"length"`
	Material   string              `json:"material"`
	Roughness  float64             `json:"roughness"` // Manning's n
	Fittings   []Fitting           `json:"fittings"`
	Cleanouts  []Point             `json:"cleanouts"`
	Marked     *bool               `json:"marked"` // as carrying water not to drink
	Cased      *bool               `json:"cased"`  // in a casing that bears wheels
	Insulation quantity.Quantity   `json:"insulation" dimension:"length"`
	Heated     *bool               `json:"heated"` // whether all of it runs where it never freezes

	// Of whatever holds or takes up water.
	EdgeLevels   []quantity.Quantity `json:"edge_levels" dimension:"level"` // of the ground at each corner of the outline
	Floor        []quantity.Quantity `json:"floor" dimension:"level"`       // one, or one for each corner
	Surface      []quantity.Quantity `json:"surface" dimension:"level"`     // finished level of the media: one, or one for each corner
	WaterLevel   quantity.Quantity   `json:"water_level" dimension:"level"`
	RimLevel     quantity.Quantity   `json:"rim_level" dimension:"level"`
	OutletLevel  quantity.Quantity   `json:"outlet_level" dimension:"level"`
	InletLevel   quantity.Quantity   `json:"inlet_level" dimension:"level"`
	Level        quantity.Quantity   `json:"level" dimension:"level"`           // of a connection's invert
	Surcharge    quantity.Quantity   `json:"surcharge_level" dimension:"level"` // to which a connection's sewer can back up
	SideSlope    quantity.Quantity   `json:"side_slope" dimension:"slope"`
	Volume       quantity.Quantity   `json:"volume" dimension:"volume"`
	Depth        quantity.Quantity   `json:"depth" dimension:"length"`
	Width        quantity.Quantity   `json:"width" dimension:"length"`
	Cover        quantity.Quantity   `json:"cover" dimension:"length"` // over the place where greywater is let in
	Covered      *bool               `json:"covered"`
	Screened     *bool               `json:"screened"`   // its vent and other openings, against insects
	Childproof   *bool               `json:"childproof"` // its lid
	Vented       *bool               `json:"vented"`
	AboveGround  *bool               `json:"above_ground"`
	SludgeDepth  quantity.Quantity   `json:"sludge_depth" dimension:"length"`
	CleanOut     quantity.Quantity   `json:"clean_out_interval" dimension:"time span"`
	OutletsCount int                 `json:"outlets"`
	Mesh         quantity.Quantity   `json:"mesh" dimension:"length"` // opening of a filter

	// Of a planted gravel bed.
	Media    []Layer           `json:"media"`                    // from the top down
	Mulch    quantity.Quantity `json:"mulch" dimension:"length"` // depth of mulch over the media
	Liner    *Liner            `json:"liner"`
	Plants   []Planting        `json:"plants"`
	Inlet    *Header           `json:"inlet"`
	Outlet   *LevelControl     `json:"outlet"`
	Drawdown *Drawdown         `json:"drawdown"`

	// Of a pond.
	Stocked    []Stock           `json:"stocked"`
	StockedBy  string            `json:"stocking_permit"` // reference of the leave to stock fish
	Edge       *Edge             `json:"edge"`
	Barrier    *Barrier          `json:"barrier"`
	Embankment *Embankment       `json:"embankment"`
	PH         float64           `json:"ph"`
	WarmWater  quantity.Quantity `json:"warm_water" dimension:"temperature"` // warmest
	Ammonia    quantity.Quantity `json:"ammonia" dimension:"density"`        // total as nitrogen

	// Of a spillway.
	CrestLevel   quantity.Quantity `json:"crest_level" dimension:"level"`
	CrestLength  quantity.Quantity `json:"crest_length" dimension:"length"`
	ChannelSlope quantity.Quantity `json:"channel_slope" dimension:"slope"` // of the channel below the crest
	Lining       string            `json:"lining"`

	// Of a storm inflow.
	Catchment         quantity.Quantity `json:"catchment" dimension:"area"`
	RunoffCoefficient *float64          `json:"runoff_coefficient"`
	Concentration     quantity.Quantity `json:"time_of_concentration" dimension:"time span"`

	Pointer string `json:"-"` // where the part stands in the document
}

// MakeUp is water let in from elsewhere.
type MakeUp struct {
	From   string `json:"from"` // drinking water, rainwater
	AirGap *bool  `json:"air_gap"`
}

// Fitting is a bend or branch in a pipe.
type Fitting struct {
	Kind string `json:"kind"` // 22.5° bend, 45° bend, 90° bend, wye, tee
	At   *Point `json:"at"`
}

// Layer is one layer of a bed's media.
type Layer struct {
	Material     string            `json:"material"`
	Size         quantity.Quantity `json:"size" dimension:"length"`      // of the stones
	Thickness    quantity.Quantity `json:"thickness" dimension:"length"` // not given: what is left down to the floor
	Porosity     quantity.Quantity `json:"porosity" dimension:"share"`
	Conductivity quantity.Quantity `json:"conductivity" dimension:"hydraulic conductivity"`
	Washed       *bool             `json:"washed"`
}

// Liner is what keeps a bed's or pond's water in.
type Liner struct {
	Material     string            `json:"material"`
	Thickness    quantity.Quantity `json:"thickness" dimension:"length"`
	Overlap      quantity.Quantity `json:"overlap" dimension:"length"`
	Bedded       *bool             `json:"bedded"`       // on sand, fine soil or felt
	Penetrations []string          `json:"penetrations"` // what goes through and how it is sealed
}

// Planting is one kind of plant in a bed or pond.
type Planting struct {
	Species   string            `json:"species"`
	Spacing   quantity.Quantity `json:"spacing" dimension:"length"`
	RootDepth quantity.Quantity `json:"root_depth" dimension:"length"`
}

// Header is the perforated pipe that spreads water across a bed's width.
type Header struct {
	Path      []Point           `json:"path"`
	Level     quantity.Quantity `json:"level" dimension:"level"`
	Cover     quantity.Quantity `json:"cover" dimension:"length"`
	Diameter  quantity.Quantity `json:"diameter" dimension:"length"`
	StoneSize quantity.Quantity `json:"stone_size" dimension:"length"` // of the coarse stone round it
	Cleanouts []Point           `json:"cleanouts"`
}

// LevelControl is the outlet that sets a bed's water level.
type LevelControl struct {
	At         *Point            `json:"at"`
	Level      quantity.Quantity `json:"level" dimension:"level"`
	Adjustable *bool             `json:"adjustable"`
	StoneSize  quantity.Quantity `json:"stone_size" dimension:"length"` // of the coarse stone round it
}

// Drawdown is the pipe that empties a bed or pond for repair.
type Drawdown struct {
	At         *Point            `json:"at"`
	Level      quantity.Quantity `json:"level" dimension:"level"`
	Accessible *bool             `json:"accessible"`
}

// Stock is the fish kept in a pond.
type Stock struct {
	Species string `json:"species"`
	Count   int    `json:"count"`
}

// Edge is the shelf round a pond.
type Edge struct {
	ShelfWidth quantity.Quantity `json:"shelf_width" dimension:"length"`
	ShelfDepth quantity.Quantity `json:"shelf_depth" dimension:"length"`
}

// Barrier is what keeps children from open water.
type Barrier struct {
	Height      quantity.Quantity `json:"height" dimension:"length"`
	SelfLatches *bool             `json:"self_latching_gate"`
}

// Embankment is the bank that holds a pond or basin.
type Embankment struct {
	TopLevel     quantity.Quantity `json:"top_level" dimension:"level"`
	TopWidth     quantity.Quantity `json:"top_width" dimension:"length"`
	OutsideSlope quantity.Quantity `json:"outside_slope" dimension:"slope"`
	ToeLevel     quantity.Quantity `json:"toe_level" dimension:"level"`
}
