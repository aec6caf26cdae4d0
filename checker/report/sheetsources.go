package report

import (
	"slices"
	"strconv"

	"greysill/checker/figures"
)

// number gives the number of a source in the list of sources, "" for no source.
func (p *paper) number(c figures.Citation) string {
	if c.Title == "" {
		return ""
	}
	i := slices.Index(p.sources, c)
	if i < 0 {
		p.sources = append(p.sources, c)
		i = len(p.sources) - 1
	}
	return "S" + strconv.Itoa(i+1)
}

func (p *paper) numbers(sources []figures.Citation) []string {
	var numbers []string
	for _, c := range sources {
		numbers = append(numbers, p.number(c))
	}
	return numbers
}

// Sources gives every source that the tables before it number, in full.
func (p *paper) Sources() []string {
	var all []string
	for _, c := range p.sources {
		all = append(all, citation(c))
	}
	return all
}
