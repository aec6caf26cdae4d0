package report

import (
	"fmt"
	"slices"

	"greysill/checker/figures"
)

// mostSubjects is how many subjects of a list a sheet has room for.
const mostSubjects = 60

// foremost gives as many items as there is room for, those with findings first,
// and says how many that leaves out.
func (p *paper) foremost(items []*figures.Item) (shown []*figures.Item, leftOut string) {
	if len(items) <= mostSubjects {
		return items, ""
	}
	found := p.withFindings()
	has := func(it *figures.Item) bool { return slices.ContainsFunc(it.Subject.IDs, found.has) }
	without := func(it *figures.Item) bool { return !has(it) }
	shown = slices.Concat(slices.DeleteFunc(slices.Clone(items), without), slices.DeleteFunc(slices.Clone(items), has))
	return shown[:mostSubjects], fmt.Sprintf("Here stand %d of %d, those with findings first; the command greysill figures prints all.", mostSubjects, len(items))
}

// ids is a set of ids.
type ids map[string]bool

func (s ids) has(id string) bool { return s[id] }

// withFindings gives the ids of everything that has findings.
func (p *paper) withFindings() ids {
	found := ids{}
	for _, n := range p.remarks {
		for _, f := range n.findings {
			for _, id := range f.Item.Subject.IDs {
				found[id] = true
			}
		}
	}
	return found
}
