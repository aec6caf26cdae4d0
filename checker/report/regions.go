package report

import (
	"io"
	"slices"
	"strings"

	"greysill/checker/rulebook"
)

// Region is a region's code with the rules in force there.
type Region struct {
	Code string
	Book Book
}

// amendment gives the region's own amendment.
func (r *Region) amendment() *rulebook.Amendment {
	for _, a := range r.Book.Amendments() {
		if a.Region == r.Code {
			return a
		}
	}
	return &rulebook.Amendment{Name: r.Code, Region: r.Code}
}

// compared is one limit as the base and the regions that set it have it.
type compared struct {
	base    *rulebook.Limit // nil where only regions have it
	name    string
	meaning string
	cells   []cell
}

// cell is one region's value of a limit.
type cell struct {
	code  string
	limit *rulebook.Limit
}

// limitsByRegion gives every limit that some region sets, by topic of the rules that
// compare with it, then by name.
func limitsByRegion(regions []Region) []compared {
	of := map[string]*compared{}
	var names []string
	for i := range regions {
		r := &regions[i]
		for _, name := range r.amendment().Limits {
			l, ok := r.Book.Limit(name)
			if !ok {
				continue
			}
			if of[name] == nil {
				of[name] = &compared{base: l.Replaced, name: name, meaning: l.Meaning}
				names = append(names, name)
			}
			of[name].cells = append(of[name].cells, cell{r.Code, l})
		}
	}
	slices.Sort(names)
	all := make([]compared, len(names))
	for i, name := range names {
		all[i] = *of[name]
	}
	return all
}

// Regions writes what each region changes, topic by topic, as text.
func Regions(w io.Writer, regions []Region, o Options) error {
	p := newPage(o)
	p.put(0, bold, "Regions with an amendment of their own")
	p.put(0, ink, "Whatever a region does not name, the base rules say. "+localCode)
	for i := range regions {
		p.region(&regions[i])
	}
	if limits := limitsByRegion(regions); len(limits) > 0 {
		p.heading("Limits, region by region")
		for i, c := range limits {
			if i > 0 {
				p.blank()
			}
			p.compared(c)
		}
	}
	_, err := io.WriteString(w, p.String())
	return err
}

func (p *page) region(r *Region) {
	a := r.amendment()
	p.blank()
	p.put(0, bold, r.Code+": "+a.Name)
	p.put(1, ink, a.Authority+". Read from "+a.Edition+", checked "+a.Checked+".")
	if a.About != "" {
		p.put(1, ink, a.About)
	}
	for _, d := range departures(r.Book, a, false) {
		p.hang(1, ink, d)
	}
}

func (p *page) compared(c compared) {
	p.put(0, bold, c.name)
	p.put(1, ink, c.meaning)
	if c.base != nil {
		p.hang(1, ink, "Base: "+together(c.base.Text)+". "+sentence(citation(c.base.Source)))
	}
	for _, cell := range c.cells {
		p.hang(1, ink, cell.code+": "+together(cell.limit.Text)+". "+sentence(citation(cell.limit.Source)))
	}
}

// RegionsPage writes the same as a page in CommonMark.
func RegionsPage(w io.Writer, regions []Region) error {
	m := &markdown{}
	m.heading(1, "Regions with an amendment of their own")
	m.paragraph("Written from the amendments themselves and held against them by the tests: `GREYSILL_UPDATE=1 go test ./checker/report` writes it anew. Whatever a region does not name, the base rules say.")
	m.paragraph(localCode)
	for i := range regions {
		m.region(&regions[i])
	}
	m.heading(2, "Limits, region by region")
	for _, c := range limitsByRegion(regions) {
		m.heading(3, c.name)
		m.paragraph(escaped(c.meaning))
		m.table("Region", "Value", "Source")
		if c.base != nil {
			m.row("base", escaped(c.base.Text), escaped(citation(c.base.Source)))
		}
		for _, cell := range c.cells {
			m.row(cell.code, escaped(cell.limit.Text), escaped(citation(cell.limit.Source)))
		}
		m.end()
	}
	_, err := io.WriteString(w, strings.TrimRight(m.String(), "\n")+"\n")
	return err
}

func (m *markdown) region(r *Region) {
	a := r.amendment()
	m.heading(2, r.Code+": "+escaped(a.Name))
	m.paragraph(escaped(a.Authority + ". Read from " + a.Edition + ", checked " + a.Checked + ". " + a.About))
	for _, d := range departures(r.Book, a, false) {
		m.item(escaped(d))
	}
	m.end()
}
