package report

import (
	"fmt"
	"slices"

	"greysill/checker/design"
	"greysill/checker/rulebook"
)

// inForce says in a sentence or two by which rules a design was judged.
func inForce(b Book, d *design.Design) string {
	amendments := b.Amendments()
	said := "Judged by the base rules alone."
	for i, a := range amendments {
		if i == 0 {
			said = "Judged by the base rules and upon them: "
		} else {
			said += "; "
		}
		said += introduced(a)
	}
	if len(amendments) > 0 {
		said += "."
	}
	if d != nil && d.Location.Region != "" && !slices.ContainsFunc(amendments, func(a *rulebook.Amendment) bool { return a.Region != "" }) {
		said += " No amendment for the region " + d.Location.Region + " is at hand: ask its authority what differs."
	}
	return said
}

// introduced names an amendment with what it was read from.
func introduced(a *rulebook.Amendment) string {
	name := a.Name
	if a.Region != "" {
		name += " (" + a.Region + ")"
	}
	return name + ", " + a.Edition + ", checked " + a.Checked
}

// departures says what an amendment changes, a sentence each; its limits only
// where they are wanted one by one.
func departures(b Book, a *rulebook.Amendment, limits bool) []string {
	var said []string
	for _, r := range b.Rules() {
		if r.SetBy == a.Name {
			said = append(said, added(a, r))
		}
		for _, c := range r.Changes {
			if c.SetBy == a.Name {
				said = append(said, levelled(c))
			}
		}
	}
	for _, s := range b.SetAside() {
		if s.SetBy == a.Name {
			said = append(said, "Sets the rule "+s.Rule+" aside: "+sentence(s.Reason)+" "+sentence(citation(s.Source)))
		}
	}
	switch names := a.Limits; {
	case limits:
		said = append(said, limitChanges(b, names)...)
	case len(names) > 0:
		said = append(said, "Sets "+plural(len(names), "limit")+"; whatever is held against one names it.")
	}
	for _, g := range a.NotCovered {
		said = append(said, "Says nothing of this: "+g.Topic+". "+sentence(g.Why))
	}
	return said
}

func added(a *rulebook.Amendment, r *rulebook.Rule) string {
	if r.Replaces == "" {
		return "Adds the rule " + r.ID + ": " + r.Title
	}
	why := ""
	for _, p := range a.Replaced {
		if p.Rule == r.ID {
			why = " " + sentence(p.Reason)
		}
	}
	return "Puts a rule of its own in place of the rule " + r.ID + " " + setBy(r.Replaces) + "." + why
}

// levelled words a change of what a rule amounts to.
func levelled(c *rulebook.LevelChange) string {
	text, and := "The rule "+c.Rule, " "
	if c.Level != c.OldLevel {
		text += and + fmt.Sprintf("%s where it is not proved to hold (the base: %s)", consequence(c.Level), consequence(c.OldLevel))
		and = ", and "
	}
	if c.NotShown != c.OldNotShown {
		text += and + fmt.Sprintf("%s where the design does not show enough (the base: %s)", consequence(c.NotShown), consequence(c.OldNotShown))
	}
	return text + ": " + sentence(c.Reason) + " " + sentence(citation(c.Source))
}

func limitChanges(b Book, names []string) []string {
	var said []string
	for _, name := range names {
		if l, ok := b.Limit(name); ok {
			said = append(said, "Limit "+limitLine(l)+". "+sentence(citation(l.Source)))
		}
	}
	return said
}

// amendments writes what amendments change, nothing when there are none.
func (p *page) amendments(b Book, limits bool) {
	for _, a := range b.Amendments() {
		p.heading("What " + a.Name + " changes")
		p.put(0, ink, "Enforced by "+a.Authority+". Read from "+a.Edition+", checked "+a.Checked+".")
		if a.About != "" {
			p.put(0, ink, a.About)
		}
		for _, d := range departures(b, a, limits) {
			p.hang(0, ink, d)
		}
	}
}
