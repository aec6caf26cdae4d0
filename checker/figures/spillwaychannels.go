package figures

import (
	"slices"
	"strings"

	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var spillwayChannelTable = tabulate(
	List{Name: "spillway_channels", Doc: "Every spillway with its crest, and the channel below it, in the design storm.", Subject: "a spillway"},
	(*drawing).spillwayChannels, (*spillwayChannel).subject,
	[]column[*spillwayChannel]{
		{Field{Name: "lining", Kind: Text, Doc: "What keeps it from washing out."}, (*spillwayChannel).lining},
		{Field{Name: "lining_stated", Kind: Truth, Doc: "Whether the drawing says what keeps it from washing out; not where it says none, bare or unlined."},
			func(c *spillwayChannel) Value { return truth(c.lined(), c.given("lining", len(c.Lining))...) }},
		{Field{Name: "storm_flow", Kind: Number, Dimension: quantity.PeakFlow, Doc: "Peak of the design storm that may reach it.", Formula: stormFormula, Source: rational},
			func(c *spillwayChannel) Value { return c.storm }},
		{Field{Name: "crest_head", Kind: Number, Dimension: quantity.Length,
			Doc:     "Head of still water over the crest at that flow, by the low end of coefficients of an earth crest; 0 when nothing comes.",
			Formula: crestFormula, Source: crestSource}, (*spillwayChannel).head},
		{Field{Name: "crest_velocity", Kind: Number, Dimension: quantity.Velocity,
			Doc:     "Velocity over the crest at that flow, by the high end of coefficients of an earth crest; 0 when nothing comes.",
			Formula: crestFormula + "; velocity = flow ÷ area", Source: crestSource}, (*spillwayChannel).crestVelocity},
		{Field{Name: "channel_slope", Kind: Number, Dimension: quantity.Slope, Doc: "Slope of the channel below the crest."},
			func(c *spillwayChannel) Value { return c.slope() }},
		{Field{Name: "channel_depth", Kind: Number, Dimension: quantity.Length,
			Doc:     "Depth of water in the channel below the crest at that flow, its bottom as wide as the crest is long; 0 when nothing comes.",
			Formula: channelFormula, Source: manning}, func(c *spillwayChannel) Value { return c.running(func(f hydraulics.Flow) float64 { return f.Depth }) }},
		{Field{Name: "channel_velocity", Kind: Number, Dimension: quantity.Velocity,
			Doc:     "Velocity in that channel at that flow, where it leaves the spillway; 0 when nothing comes.",
			Formula: channelFormula, Source: manning}, func(c *spillwayChannel) Value { return c.running(velocity) }},
	},
)

const (
	crestFormula   = "the depth y at which flow = share × √(gravity × area³ ÷ top width), share = coefficient ÷ 3.09 in feet; head = y + area ÷ (2 × top width)"
	channelFormula = "the depth at which area × (area ÷ wetted perimeter)^(2/3) × slope^(1/2) ÷ n is the flow; velocity = flow ÷ area"
)

var crestSource = Citation{Title: hydraulics.BroadCrestSource, Standing: FromMemory}

// spillwayChannel is a spillway with the storm that may reach it.
type spillwayChannel struct {
	*part
	storm Value
}

func (d *drawing) spillwayChannels() []*spillwayChannel {
	var all []*spillwayChannel
	for _, p := range d.ofKind(spillway) {
		all = append(all, &spillwayChannel{p, d.peaks().storm(p)})
	}
	return all
}

func (c *spillwayChannel) lining() Value {
	if c.Lining == "" {
		return unknown(c.lack("lining"))
	}
	return text(c.Lining, c.drawn("lining"))
}

// bare has the words that a lining which is none begins with.
var bare = []string{"none", "no lining", "bare", "unlined"}

func (c *spillwayChannel) lined() bool {
	lining := strings.ToLower(strings.TrimSpace(c.Lining))
	return lining != "" && !slices.ContainsFunc(bare, func(word string) bool { return strings.HasPrefix(lining, word) })
}

// dry reports whether nothing comes.
func (c *spillwayChannel) dry() bool { return c.storm.Known() && c.storm.Number == 0 }

func (c *spillwayChannel) head() Value {
	if c.dry() {
		return c.storm
	}
	crest, drawn := c.spill(leastEarth)
	return worked(c.lack("crest_length"), func() (float64, error) {
		_, head, err := crest.Carrying(c.storm.Number)
		return head, err
	}, c.storm, drawn)
}

func (c *spillwayChannel) crestVelocity() Value {
	if c.dry() {
		return c.storm
	}
	crest, drawn := c.spill(greatestEarth)
	return worked(c.lack("crest_length"), func() (float64, error) {
		flow, _, err := crest.Carrying(c.storm.Number)
		return flow.Velocity, err
	}, c.storm, drawn)
}

func (c *spillwayChannel) slope() Value { return c.entry("channel_slope", c.ChannelSlope) }

// running gives a figure of the uniform flow in the channel.
func (c *spillwayChannel) running(figure func(hydraulics.Flow) float64) Value {
	if c.dry() {
		return c.storm
	}
	bottom, drawn := c.spill(1)
	slope, rough := c.slope(), number(c.Roughness, c.drawn("roughness"))
	if c.Roughness == 0 {
		rough = unknown(c.lack("roughness"))
	}
	channel := hydraulics.Channel{Bottom: bottom.Bottom, SideSlope: bottom.SideSlope, Slope: slope.Number, Roughness: rough.Number}
	return worked(c.lack("channel_slope"), func() (float64, error) {
		flow, err := channel.Carrying(c.storm.Number)
		return figure(flow), err
	}, c.storm, drawn, slope, rough)
}
