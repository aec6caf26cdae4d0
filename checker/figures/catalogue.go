package figures

import "greysill/checker/quantity"

// Catalogue lists every list of the rule input. The order is the order of
// reports and of the generated reference.
var Catalogue = catalogue()

func catalogue() []*List {
	lists := []*List{systemList, inflowList, partList, flowList, routeList, diverterList, bedList, reachList, dischargeList, openWaterList, holdingList}
	return append(lists, clearanceLists...)
}

// The declarations below stand with the code that fills them once it is written
// (one file per subject); they are the contract that rules are written against.

var systemList = &List{
	Name: "system", Doc: "The system as a whole: always one item.", Subject: "the system",
	Fields: []*Field{
		{Name: "region", Kind: Text, Doc: "ISO 3166-2 code of the region."},
		{Name: "sewage", Kind: Text, Doc: "What takes the house's sewage.", Words: []string{"sewer", "septic tank"}},
		{Name: "bedrooms", Kind: Number, Dimension: quantity.Number, Doc: "Bedrooms of the dwelling."},
		{Name: "occupants_by_bedrooms", Kind: Number, Dimension: quantity.Number, Doc: "Occupants that the code counts.", Formula: "2 for the first bedroom + 1 for each further bedroom"},
		{Name: "occupants", Kind: Number, Dimension: quantity.Number, Doc: "Occupants that the flow is worked out for.", Formula: "the greater of the code's count and the occupants stated"},
		{Name: "daily_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that the fixtures on the system give.", Formula: "occupants × (25 gal/d for bathing if on the system + 15 gal/d for laundry if on the system)"},
		{Name: "freezing_months", Kind: Text, Doc: "The months that freeze, in order; empty when none does."},
		{Name: "any_month_freezes", Kind: Truth, Doc: "Whether any month freezes."},
		{Name: "bypass_season", Kind: Text, Doc: "The bypass season as drawn."},
		{Name: "bypass_covers_freezing_months", Kind: Truth, Doc: "Whether every day of every freezing month lies in the bypass season."},
		{Name: "months_left_open", Kind: Text, Doc: "The freezing months that the bypass season leaves out, in part or whole."},
	},
}

var inflowList = &List{
	Name: "inflows", Doc: "Every source, and every storm inflow among the parts.", Subject: "something that drains in",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The source's kind."},
		{Name: "water", Kind: Text, Doc: "The class of its water.", Words: []string{"greywater", "toilet waste", "kitchen waste", "clear water", "brine"}},
		{Name: "enters_train", Kind: Truth, Doc: "Whether any of its water reaches a part that stores, treats or takes up greywater, in any season."},
		{Name: "enters_at_or_above_bed", Kind: Truth, Doc: "Whether any of its water reaches a planted gravel bed or anything that drains to one, or mulch basins and trenches where there is no bed."},
		{Name: "route", Kind: Text, Doc: "Where its water goes, part by part, in the warm season."},
	},
}

var partList = &List{
	Name: "parts", Doc: "Every part of the train.", Subject: "a part",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The part's kind."},
		{Name: "inside_boundary", Kind: Truth, Doc: "Whether the whole part lies on one's own land."},
		{Name: "outside_by", Kind: Number, Dimension: quantity.Length, Doc: "How far its farthest point lies beyond the boundary; 0 inside."},
		{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area of its outline in plan; 0 for a point or a line.", Formula: "½ Σ (x₁y₂ − x₂y₁) round the outline"},
	},
}

var flowList = &List{
	Name: "flows", Doc: "What passes through each part.", Subject: "a part",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The part's kind."},
		{Name: "warm_sources", Kind: Text, Doc: "The sources whose water reaches it in the warm season."},
		{Name: "warm_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the warm season."},
		{Name: "bypass_sources", Kind: Text, Doc: "The sources whose water reaches it in the bypass season."},
		{Name: "bypass_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the bypass season."},
	},
}

var routeList = &List{
	Name: "routes", Doc: "Every greywater source that enters the train.", Subject: "a greywater source on the system",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The source's kind."},
		{Name: "diverter_on_every_way", Kind: Truth, Doc: "Whether its water meets a diverter on every way to the first part that stores, treats or takes up greywater."},
		{Name: "diverters", Kind: Text, Doc: "The diverters that it meets."},
		{Name: "route", Kind: Text, Doc: "Where its water goes, part by part, in the warm season."},
	},
}

var diverterList = &List{
	Name: "diverters", Doc: "Every diverter.", Subject: "a diverter",
	Fields: []*Field{
		{Name: "second_route_reaches_sewer", Kind: Truth, Doc: "Whether every way of its second route ends in a sewer or septic connection without meeting a part that stores, treats or takes up greywater."},
		{Name: "second_route", Kind: Text, Doc: "Where its second route goes, part by part."},
	},
}

var bedList = &List{
	Name: "beds", Doc: "Every planted gravel bed.", Subject: "a planted gravel bed",
	Fields: []*Field{
		{Name: "area", Kind: Number, Dimension: quantity.Area, Doc: "Area in plan."},
		{Name: "depth_least", Kind: Number, Dimension: quantity.Length, Doc: "Least depth of media over the outline."},
		{Name: "depth_least_at", Kind: Text, Doc: "Where it is least."},
		{Name: "depth_greatest", Kind: Number, Dimension: quantity.Length, Doc: "Greatest depth of media over the outline."},
		{Name: "depth_greatest_at", Kind: Text, Doc: "Where it is greatest."},
		{Name: "depth_mean", Kind: Number, Dimension: quantity.Length, Doc: "Mean depth of media.", Formula: "volume ÷ area"},
		{Name: "floor_range", Kind: Number, Dimension: quantity.Length, Doc: "Highest less lowest floor level."},
		{Name: "water_below_surface", Kind: Number, Dimension: quantity.Level, Doc: "Depth of the water level below the lowest point of the gravel's surface; negative where water stands in the open."},
	},
}

var reachList = &List{
	Name: "reaches", Doc: "Every reach of every drain pipe and overflow pipe, between one drawn invert and the next.", Subject: "a reach of pipe",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The pipe's kind.", Words: []string{"drain pipe", "overflow pipe"}},
		{Name: "length", Kind: Number, Dimension: quantity.Length, Doc: "Length along the pipe in plan."},
		{Name: "fall", Kind: Number, Dimension: quantity.Level, Doc: "Upper invert less lower invert; negative where it runs uphill."},
		{Name: "slope", Kind: Number, Dimension: quantity.Slope, Doc: "Fall over length; negative where it runs uphill.", Formula: "fall ÷ length in plan"},
	},
}

var dischargeList = &List{
	Name: "discharges", Doc: "Every place where greywater is let into gravel, mulch or soil: beds, mulch basins, infiltration trenches.", Subject: "a place of discharge",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The part's kind."},
		{Name: "cover", Kind: Number, Dimension: quantity.Length, Doc: "Depth of gravel, mulch or soil over the place where the water is let in."},
	},
}

var openWaterList = &List{
	Name: "open_water", Doc: "Every part whose water lies open: ponds, and basins and tanks drawn uncovered.", Subject: "open water",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The part's kind."},
		{Name: "receives_greywater", Kind: Truth, Doc: "Whether greywater reaches it, treated or not, in any season or by any overflow."},
		{Name: "treated_first", Kind: Truth, Doc: "Whether all greywater that reaches it has passed through a planted gravel bed; true when none reaches it."},
		{Name: "untreated_from", Kind: Text, Doc: "The sources whose water reaches it untreated."},
		{Name: "has_permit", Kind: Truth, Doc: "Whether the drawing names a permit of its own."},
	},
}

var holdingList = &List{
	Name: "holdings", Doc: "Every part that holds water: surge tanks, planted gravel beds, settling basins, ponds.", Subject: "a part that holds water",
	Fields: []*Field{
		{Name: "kind", Kind: Text, Doc: "The part's kind."},
		{Name: "has_overflow", Kind: Truth, Doc: "Whether an overflow is drawn."},
		{Name: "overflow_ends_safely", Kind: Truth, Doc: "Whether every way that its overflow takes ends in a sewer or septic connection, a mulch basin or an infiltration trench."},
		{Name: "overflow_route", Kind: Text, Doc: "Where its overflow goes, part by part."},
	},
}

// clearanceLists has one list for each group of features that rules keep clear of.
var clearanceLists = []*List{
	clearanceList("well", "wells and springs"),
	clearanceList("surface_water", "streams, lakes, ponds that are there already, wetlands"),
	clearanceList("building", "buildings"),
	clearanceList("property_line", "the boundary, measured from the inside; 0 when on or over it"),
	clearanceList("septic_tank", "septic tanks"),
	clearanceList("disposal_field", "sewage disposal fields and seepage pits"),
	clearanceList("water_service", "the house's water service, drawn as a feature or as a buried water line"),
	clearanceList("public_main", "public water mains"),
	clearanceList("ground", "retaining walls and slope breaks"),
	clearanceList("planting", "trees and edible gardens"),
	clearanceList("paving", "driveways and other paving"),
	clearanceList("drainage", "neighbours' drains, storm drains and ditches"),
	clearanceList("floodway", "floodways"),
	clearanceList("pool", "swimming pools"),
	clearanceList("buried_line", "every buried service"),
}

func clearanceList(name, what string) *List {
	return &List{
		Name: "clearances." + name, Doc: "Every part paired with " + what + ".", Subject: "a part and what it must keep clear of",
		Fields: []*Field{
			{Name: "part", Kind: Text, Doc: "The part's id."},
			{Name: "part_kind", Kind: Text, Doc: "The part's kind."},
			{Name: "works", Kind: Text, Doc: "What the part does with greywater: a tank keeps it watertight, a field lets it into gravel, soil or open water, a pipe carries it, a fitting is anything else.", Words: []string{"tank", "field", "pipe", "fitting"}},
			{Name: "feature", Kind: Text, Doc: "The feature's or service's id."},
			{Name: "feature_kind", Kind: Text, Doc: "The feature's or service's kind."},
			{Name: "distance", Kind: Number, Dimension: quantity.Length, Doc: "Least distance in plan between the two; 0 where they touch or overlap.", Formula: "least distance between the two shapes in plan"},
		},
	}
}
