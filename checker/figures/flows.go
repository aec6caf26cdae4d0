package figures

import "greysill/checker/quantity"

const flowFormula = "the daily flow of each stream (where more is stated than the code counts, as much more of each), shared evenly among its fixtures on the system and followed along the ways drawn, by their shares; " +
	"outlets without a share split evenly what is left"

var flowTable = tabulate(
	List{Name: "flows", Doc: "What passes through each part.", Subject: "a part"},
	(*drawing).flows, flow.subject,
	[]column[flow]{
		{Field{Name: "kind", Kind: Text, Doc: "The part's kind."}, flow.kind},
		{Field{Name: "warm_season_sources", Kind: Text, Doc: "The sources whose water reaches it in the warm season; \"none\" where none does."},
			func(f flow) Value { return f.sources(warm) }},
		{Field{Name: "warm_season_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the warm season.",
			Formula: flowFormula, Source: householdFlow},
			func(f flow) Value { return f.greywater(warm) }},
		{Field{Name: "bypass_season_sources", Kind: Text, Doc: "The sources whose water reaches it in the bypass season; \"none\" where none does."},
			func(f flow) Value { return f.sources(bypassing) }},
		{Field{Name: "bypass_season_flow", Kind: Number, Dimension: quantity.Flow, Doc: "Greywater a day that reaches it in the bypass season.",
			Formula: flowFormula, Source: householdFlow},
			func(f flow) Value { return f.greywater(bypassing) }},
	},
)

// flow is a part with the water of the whole system in both seasons.
type flow struct {
	*part
	seasons *[everSeason]seasonFlow
}

// seasonFlow is the water of the system in one season.
type seasonFlow struct {
	into []float64 // the greywater that reaches each node
	from [][]bool  // for each source, the nodes that its water reaches
	open []int     // where any of it goes on in a way not drawn
	lost []int     // where greywater does
}

func (d *drawing) newFlows() []flow {
	var water [everSeason]seasonFlow
	for s := range water {
		water[s] = d.inSeason(season(s))
	}
	all := make([]flow, len(d.parts))
	for i, p := range d.parts {
		all[i] = flow{p, &water}
	}
	return all
}

func (d *drawing) inSeason(s season) seasonFlow {
	n := d.network
	f := seasonFlow{into: n.carry(d.streams.from(d.Design), s)}
	for i := range d.Sources {
		met := n.downstream(i, s, nil)
		ends := n.openEnds(i, met, nil)
		f.from = append(f.from, met)
		f.open = append(f.open, ends...)
		if waterOf[n.nodes[i].kind] == greywater {
			f.lost = append(f.lost, ends...)
		}
	}
	return f
}

// carry follows given flows down the network in a season and gives what
// reaches each node.
func (n *network) carry(flow map[int]float64, s season) []float64 {
	into := make([]float64, len(n.nodes))
	for _, i := range n.order {
		out := into[i] + flow[i]
		for _, w := range n.nodes[i].ways[s] {
			into[w.to] += out * w.share
		}
	}
	return into
}

func (f flow) sources(s season) Value {
	var names []string
	var inputs []Input
	for i, met := range f.seasons[s].from {
		if met[f.node] {
			names = append(names, f.drawing.Sources[i].ID)
			inputs = append(inputs, Input{Name: f.drawing.Sources[i].ID, Pointer: f.drawing.Sources[i].Pointer + "/to"})
		}
	}
	return orUnknown(text(listed(names), inputs...), f.lacks(f.seasons[s].open))
}

func (f flow) greywater(s season) Value {
	v := number(f.seasons[s].into[f.node], f.drawing.streams.inputs...)
	return orUnknown(orUnknown(v, f.lacks(f.seasons[s].lost)), f.drawing.streams.lacks)
}

// lacks lists the ways that are not drawn and might lead to the part.
func (f flow) lacks(open []int) []Lack {
	return f.drawing.network.lacks(f.drawing.network.above(f.node, open))
}
