package figures

import "strings"

func (p *part) stocked() Value {
	return truth(len(p.Stocked) > 0, p.given("stocked", len(p.Stocked))...)
}

func (p *part) fish() Value {
	names := make([]string, len(p.Stocked))
	for i, s := range p.Stocked {
		names[i] = s.Species
	}
	return text(listed(names), p.given("stocked", len(p.Stocked))...)
}

func (p *part) hasStockingPermit() Value {
	return truth(strings.TrimSpace(p.StockedBy) != "", p.given("stocking_permit", len(p.StockedBy))...)
}
