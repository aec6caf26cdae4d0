package figures

import (
	"strconv"
	"strings"

	"greysill/checker/quantity"
)

var systemTable = tabulate(
	List{Name: "system", Doc: "The system as a whole.", Subject: "the system"},
	func(d *drawing) []*drawing { return []*drawing{d} },
	func(*drawing) Subject { return Subject{Name: "the system", Pointers: []string{""}} },
	[]column[*drawing]{
		{Field{Name: "region", Kind: Text, Doc: "ISO 3166-2 code of the region."}, (*drawing).region},
		{Field{Name: "sewage", Kind: Text, Doc: "What takes the house's sewage.", Words: []string{"sewer", "septic tank"}}, (*drawing).sewage},
		{Field{Name: "basement", Kind: Truth, Doc: "Whether the dwelling has a basement, as stated."}, (*drawing).basement},
		{Field{Name: "cross_connection", Kind: Truth, Doc: "Whether drinking water is joined to the greywater system other than through an air gap, as stated."},
			(*drawing).crossConnection},
		{Field{Name: "bedrooms", Kind: Number, Dimension: quantity.Number, Doc: "Bedrooms of the dwelling."}, (*drawing).bedrooms},
		{Field{Name: "occupants_by_bedrooms", Kind: Number, Dimension: quantity.Number,
			Doc:     "Occupants that the code counts.",
			Formula: "2 for the first bedroom + 1 for each further bedroom", Source: householdFlow}, (*drawing).occupantsByBedrooms},
		{Field{Name: "occupants", Kind: Number, Dimension: quantity.Number,
			Doc:     "Occupants that the flow is worked out for.",
			Formula: "the greater of the code's count and the occupants stated"}, (*drawing).occupants},
		{Field{Name: "occupants_per_bedroom", Kind: Number, Dimension: quantity.Number,
			Doc:     "Occupants that the flow is worked out for, for each bedroom.",
			Formula: "occupants ÷ bedrooms"}, (*drawing).occupantsPerBedroom},
		{Field{Name: "daily_flow", Kind: Number, Dimension: quantity.Flow,
			Doc:     "Greywater a day that the fixtures on the system give: by occupants, or as stated where more is stated.",
			Formula: "the greater of the flow stated and occupants × (25 gal/d for bathing if on the system + 15 gal/d for laundry if on the system)", Source: householdFlow}, (*drawing).dailyFlow},
	},
)

func (d *drawing) region() Value { return text(d.Location.Region) }

func (d *drawing) sewage() Value {
	if d.Dwelling.Sewage == "" {
		return unknown(Lack{"/dwelling/sewage", "sewage of the dwelling"})
	}
	return text(d.Dwelling.Sewage)
}

func (d *drawing) basement() Value {
	return stated(d.Dwelling.Basement, "/dwelling", "basement", "the dwelling")
}

func (d *drawing) crossConnection() Value {
	return stated(d.Dwelling.CrossConnection, "/dwelling", "cross_connection", "the dwelling")
}

func (d *drawing) bedrooms() Value { return number(float64(d.Dwelling.Bedrooms)) }

func (d *drawing) occupantsByBedrooms() Value {
	return number(float64(OccupantsByBedrooms(d.Dwelling.Bedrooms)), bedroomsDrawn)
}

var bedroomsDrawn = Input{Name: "bedrooms", Pointer: "/dwelling/bedrooms"}

func (d *drawing) occupants() Value {
	inputs := []Input{{Name: "occupants by bedrooms", Value: strconv.Itoa(OccupantsByBedrooms(d.Dwelling.Bedrooms))}}
	if d.Dwelling.Occupants > 0 {
		inputs = append(inputs, Input{Name: "occupants", Pointer: "/dwelling/occupants"})
	}
	return number(float64(occupants(d.Dwelling)), inputs...)
}

// occupantsPerBedroom counts a dwelling without a bedroom as having one, as
// OccupantsByBedrooms does.
func (d *drawing) occupantsPerBedroom() Value {
	people := d.occupants()
	return number(people.Number/float64(max(d.Dwelling.Bedrooms, 1)), append(people.Inputs, bedroomsDrawn)...)
}

func (d *drawing) dailyFlow() Value {
	return orUnknown(number(d.streams.total, d.streams.inputs...), d.streams.lacks)
}

func (d *drawing) flowByOccupants() Value {
	return orUnknown(number(d.streams.byOccupants, d.streams.inputs...), d.streams.lacks)
}

const seasonPointer = "/operation/bypass_season"

func (d *drawing) freezingMonths() Value {
	return d.ofFreezing(func(months []int) Value { return text(strings.Join(monthNames(months), ", ")) })
}

func (d *drawing) bypassSeason() Value { return text(seasonText(d.season())) }

func (d *drawing) hasBypassSeason() Value {
	return truth(d.season() != nil)
}

func (d *drawing) bypassCovers() Value {
	return d.ofFreezing(func(months []int) Value { return truth(len(leftOpen(months, d.season())) == 0) })
}

func (d *drawing) monthsLeftOpen() Value {
	return d.ofFreezing(func(months []int) Value {
		return text(strings.Join(monthNames(leftOpen(months, d.season())), ", "))
	})
}
