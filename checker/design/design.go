// Package design holds a household greywater system's design as its document
// gives it: read strictly, units understood, coordinates in metres, references
// between parts resolved. It knows no rule and computes nothing of the
// engineering.
package design

import (
	"greysill/checker/quantity"
	"greysill/checker/source"
)

// Format is the value of a design document's format entry.
const Format = "greywater-design/1"

// Design is one design document. Entries that the document does not give have
// their zero value; quantities tell by Given.
type Design struct {
	Schema       string          `json:"$schema"`
	Format       string          `json:"format"`
	Title        string          `json:"title"`
	Location     Location        `json:"location"`
	Units        quantity.System `json:"units"`
	Prepared     Prepared        `json:"prepared"`
	Dwelling     Dwelling        `json:"dwelling"`
	Site         Site            `json:"site"`
	Sources      []Source        `json:"sources"`
	Parts        []Part          `json:"parts"`
	Construction *Construction   `json:"construction"`
	Operation    *Operation      `json:"operation"`
	Variances    []Variance      `json:"variances"`
	Tolerances   *Tolerances     `json:"tolerances"`
	Note         string          `json:"note"`

	// Document is the file that the design was read from.
	Document *source.Document `json:"-"`
}

// Location says whose law applies and where on Earth the site is.
type Location struct {
	Region   string            `json:"region"` // ISO 3166-2
	Place    string            `json:"place"`
	Latitude quantity.Quantity `json:"latitude" dimension:"angle"` // north positive
	Altitude quantity.Quantity `json:"altitude" dimension:"level"` // above the sea
}

// Prepared says who drew the design and when. Dates are RFC 3339 full-dates.
type Prepared struct {
	Role     string `json:"role"`
	Date     string `json:"date"`
	Revision string `json:"revision"`
}

// Dwelling is the house that the greywater comes from.
type Dwelling struct {
	Bedrooms   int               `json:"bedrooms"`
	Occupants  int               `json:"occupants"` // 0 when not given
	Sewage     string            `json:"sewage"`    // sewer, septic tank
	Basement   *bool             `json:"basement"`
	StatedFlow quantity.Quantity `json:"stated_flow" dimension:"flow"`

	CrossConnection *bool `json:"cross_connection"` // whether drinking water is joined to the greywater system
}

// Construction says how the system is built.
type Construction struct {
	LinesCalledIn    *bool             `json:"lines_called_in"` // before the first dig, private lines too
	CaveInProtection *bool             `json:"cave_in_protection"`
	TrenchExits      *bool             `json:"trench_exits"`
	SpoilDistance    quantity.Quantity `json:"spoil_distance" dimension:"length"` // from the edge of a cut
	BareSoilHeld     *bool             `json:"bare_soil_held"`                    // in rain, until it is grown over
	LicensedWork     []string          `json:"licensed_work"`                     // left to licensed people
}

// Operation says how the finished system is run.
type Operation struct {
	BypassSeason *Season `json:"bypass_season"`
	Operator     string  `json:"operator"`
	Tasks        []Task  `json:"tasks"`
}

// Season is a part of the year, both days included, as MM-DD. It may run over
// the new year.
type Season struct {
	From string `json:"from"`
	To   string `json:"to"`
}

// Task is one maintenance task.
type Task struct {
	Task  string            `json:"task"`
	Part  string            `json:"part"`
	Every quantity.Quantity `json:"every" dimension:"time span"`
	Who   string            `json:"who"`
}

// Variance is an authority's leave to depart from one rule at one part.
type Variance struct {
	Rule      string `json:"rule"`
	Part      string `json:"part"`
	Reason    string `json:"reason"`
	Authority string `json:"authority"`
	Reference string `json:"reference"`
	Expires   string `json:"expires"` // RFC 3339 full-date
}

// Tolerances says how far entries of the design may be off.
type Tolerances struct {
	Level    quantity.Quantity `json:"level" dimension:"length"`
	Distance quantity.Quantity `json:"distance" dimension:"length"`
	Flow     quantity.Quantity `json:"flow" dimension:"share"`
	Storm    quantity.Quantity `json:"storm" dimension:"share"`
}
