package report

import (
	"slices"

	"greysill/checker/figures"
)

// TaskView is one maintenance task of the design.
type TaskView struct{ Task, Part, Every, Who string }

// Tasks gives the maintenance that the design plans.
func (p *paper) Tasks() []TaskView {
	if p.Design.Operation == nil {
		return nil
	}
	var tasks []TaskView
	for _, t := range p.Design.Operation.Tasks {
		tasks = append(tasks, TaskView{t.Task, t.Part, t.Every.Text, t.Who})
	}
	return tasks
}

// Operator gives who runs the finished system, "" when the design does not say.
func (p *paper) Operator() string {
	if p.Design.Operation == nil {
		return ""
	}
	return p.Design.Operation.Operator
}

// Decision is a matter with who decides it and who may do the work.
type Decision struct{ Matter, Authority, Work string }

// Decisions says who decides what, as is usual: common practice, no source. The
// names of offices differ from place to place.
func (p *paper) Decisions() []Decision {
	return []Decision{
		{"Whether a greywater system may be built, of what kind and size, and with what permit", "The authority having jurisdiction: the building or health department",
			"Whoever the permit names; in some places a licensed designer"},
		{"Drains inside the house, diverters, traps and vents, connections to a sewer", "The plumbing inspector; the sewer utility for its own line", "A licensed plumber, under a permit"},
		{"Connection to a septic tank, and anything near its field", "The health department", "A licensed septic contractor"},
		{"Anything near a drinking-water pipe, a well or a spring", "The health department; the water supplier for its main", "A licensed plumber or well contractor"},
		{"Pumps, alarms and anything else on mains electricity", "The electrical inspector", "A licensed electrician"},
		{"Anything near a gas pipe", "The gas utility", "The utility or a licensed gas fitter"},
		{"Where buried lines are, before any digging", "The owners of the lines, through the locating service, and private locators for the owner's own lines", "Hand digging near the marks"},
		{"Trenches that somebody enters", "The trench safety rules in force", "A competent person, who slopes or shores them"},
		{"Ponds, spillways, embankments, and water let out to a ditch, stream or the street", "The environmental, water rights and stormwater authorities", "An engineer where the authority asks for one"},
		{"Anything that comes near or over the boundary", "The building department, and the neighbour in writing", "A licensed surveyor where the line is in doubt"},
	}
}

// inForce says by which rules the design was judged, "" where it was not.
func (p *paper) inForce() string {
	if p.Book == nil {
		return ""
	}
	return inForce(p.Book, p.Design)
}

// AmendmentView is an amendment with what it changes.
type AmendmentView struct {
	Name, Introduced, About string
	Changes                 []string
}

// Amendments gives what the amendments in force change.
func (p *paper) Amendments() []AmendmentView {
	var views []AmendmentView
	for _, a := range p.Book.Amendments() {
		views = append(views, AmendmentView{a.Name, "Enforced by " + a.Authority + ". Read from " + a.Edition + ", checked " + a.Checked + ".", a.About, departures(p.Book, a, false)})
	}
	return views
}

// Cautions gives the words of warning that apply to the design.
func (p *paper) Cautions() []string { return p.cautions() }

// Missing is an entry that the design lacks, with where it would stand.
type Missing struct{ Entry, Place string }

// NotShown gives every entry that the design would have to give for all figures
// to be known, each once.
func (p *paper) NotShown() []Missing {
	var seen []figures.Lack
	var all []Missing
	for _, l := range p.Figures.Lists {
		for _, it := range l.Items {
			for i := range it.Values {
				for _, lack := range it.Values[i].Lacks {
					if !slices.Contains(seen, lack) {
						seen = append(seen, lack)
						all = append(all, Missing{lack.Entry, p.lineColumn(lack.Pointer)})
					}
				}
			}
		}
	}
	return all
}

// Empty names the lists of figures that nothing on the design belongs to.
func (p *paper) Empty() string {
	var names []string
	for _, l := range p.Figures.Lists {
		if len(l.Items) == 0 {
			names = append(names, listTitle(l.List))
		}
	}
	return listing(names)
}

// VarianceRemarks says which variances of the design do not count.
func (p *paper) VarianceRemarks() []Missing {
	var all []Missing
	for _, v := range p.Verdict.Variances {
		words := "Variance from " + v.Variance.Rule
		if v.Variance.Part != "" {
			words += " for " + v.Variance.Part
		}
		words += ": " + sentence(v.Found)
		if v.Remedy != "" {
			words += " " + sentence(v.Remedy)
		}
		all = append(all, Missing{words, p.lineColumn(v.Pointer)})
	}
	return all
}

// Unjudged says which rules could not be judged.
func (p *paper) Unjudged() []string {
	var all []string
	for _, b := range p.Verdict.Broken {
		all = append(all, sentence(b.Err.Error())+" File "+b.Rule.File+".")
	}
	return all
}
