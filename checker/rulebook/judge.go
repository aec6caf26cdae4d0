package rulebook

import (
	"cmp"
	"context"
	"fmt"
	"runtime"
	"slices"
	"sync"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/figures"
	"greysill/checker/source"
)

// Judge holds the figures against every rule. Variances count that have not
// expired on the day of asOf. It is safe for concurrent use.
func (b *Book) Judge(ctx context.Context, f *figures.Figures, asOf time.Time) *Verdict {
	ctx, cancel := context.WithTimeoutCause(ctx, b.patience, fmt.Errorf("all rules together took longer than the limit of %v", b.patience))
	defer cancel()
	input, unfit := inputOf(f, b.reads)
	results := make([]Verdict, len(b.rules))
	b.each(size(f), func(i int) {
		j := &judgement{book: b, rule: b.rules[i], query: &b.queries[i], items: inDocument(f, b.rules[i].Subjects.Name)}
		results[i] = j.of(ctx, input, unfit)
	})
	v := &Verdict{Figures: f}
	for _, r := range results {
		v.Findings = append(v.Findings, r.Findings...)
		v.Excused = append(v.Excused, r.Excused...)
		v.NotApplicable = append(v.NotApplicable, r.NotApplicable...)
		v.Broken = append(v.Broken, r.Broken...)
	}
	v.vary(b, asOf)
	return v
}

// reads reports whether a rule in force reads the list. Of the others, most items
// of a design may be.
func (b *Book) reads(l *figures.List) bool {
	return slices.ContainsFunc(b.rules, func(r *Rule) bool {
		return r.Subjects.Name == l.Name || slices.Contains(r.lists, l.Name)
	})
}

// inDocument gives the items of the list in the order in which the document
// gives what they are about.
func inDocument(f *figures.Figures, list string) []*figures.Item {
	items := f.List(list)
	if f.Design == nil || f.Design.Document == nil {
		return items
	}
	places := make(map[string]source.Position, len(items))
	for _, item := range items {
		if pointer := place(item); places[pointer].Line == 0 {
			places[pointer] = f.Design.Document.Position(pointer)
		}
	}
	return slices.SortedStableFunc(slices.Values(items), func(a, b *figures.Item) int {
		p, q := places[place(a)], places[place(b)]
		return cmp.Or(cmp.Compare(p.Line, q.Line), cmp.Compare(p.Column, q.Column))
	})
}

// place gives the pointer to what an item is about, to the document as a whole
// when it is about nothing less.
func place(item *figures.Item) string {
	if len(item.Subject.Pointers) == 0 {
		return ""
	}
	return item.Subject.Pointers[0]
}

// manyItems is the number of items from which on it pays to judge rules side by
// side; below it a design is judged in a few milliseconds.
const manyItems = 1000

func size(f *figures.Figures) int {
	n := 0
	for _, l := range f.Lists {
		n += len(l.Items)
	}
	return n
}

// each calls the function for every rule, side by side when there is much to do.
func (b *Book) each(items int, judge func(i int)) {
	if items < manyItems {
		for i := range b.rules {
			judge(i)
		}
		return
	}
	var (
		wg   sync.WaitGroup
		next = make(chan int)
	)
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for i := range next {
				judge(i)
			}
		})
	}
	for i := range b.rules {
		next <- i
	}
	close(next)
	wg.Wait()
}

// judgement is one rule's judging of one design.
type judgement struct {
	book  *Book
	rule  *Rule
	query *query
	items []*figures.Item
}

func (j *judgement) of(ctx context.Context, input ast.Value, unfit map[string]error) Verdict {
	for _, list := range append(slices.Clone(j.rule.lists), j.rule.Subjects.Name) {
		if err := unfit[list]; err != nil {
			return j.broken(err)
		}
	}
	if len(j.items) == 0 {
		return Verdict{NotApplicable: []*Rule{j.rule}}
	}
	said, err := j.ask(ctx, input)
	if err != nil {
		return j.broken(err)
	}
	return j.sort(said)
}

func (j *judgement) broken(err error) Verdict {
	return Verdict{Broken: []Broken{{Rule: j.rule, Err: fmt.Errorf("rule %s could not be judged: %w", j.rule.ID, err)}}}
}

// sort makes a finding or an excuse of every subject. The subjects are those of
// the list, whatever the rule says, so that none can be lost.
func (j *judgement) sort(said answer) Verdict {
	var v Verdict
	known := make(map[string]bool, len(j.items))
	for _, item := range j.items {
		name := item.Subject.Name
		known[name] = true
		reason, excused := said.excused[name]
		switch {
		case excused && said.proved[name]:
			return j.broken(fmt.Errorf("it both proves and excuses %s", source.Quote(name)))
		case excused:
			v.Excused = append(v.Excused, Excused{Rule: j.rule, Item: item, Reason: reason})
		default:
			v.Findings = append(v.Findings, j.finding(item, said.proved[name]))
		}
	}
	if name, ok := stranger(said, known); ok {
		return j.broken(fmt.Errorf("it speaks of %s, which is no subject of %s", source.Quote(name), j.rule.Subjects.Name))
	}
	if len(v.Findings) == 0 {
		v.NotApplicable = []*Rule{j.rule}
	}
	return v
}

// finding says what an item that is not excused amounts to. What is drawn and
// measured on the wrong side of a limit fails even when something else is not
// shown.
func (j *judgement) finding(item *figures.Item, proved bool) Finding {
	f := Finding{Rule: j.rule, Status: Pass, Item: item, Measured: j.measured(item)}
	if proved {
		return f
	}
	f.Status = status(j.rule.Level)
	if slices.ContainsFunc(f.Measured, func(m Measured) bool { return m.Margin < 0 }) {
		return f
	}
	if f.Lacks = j.lacks(item); len(f.Lacks) > 0 {
		f.Status = status(j.rule.NotShown)
	}
	return f
}

func status(l Level) Status {
	if l == LevelWarn {
		return Warn
	}
	return Fail
}

// lacks gives the entries that the fields which decide still need, each once.
func (j *judgement) lacks(item *figures.Item) []figures.Lack {
	var lacks []figures.Lack
	for _, name := range j.rule.reads {
		for _, lack := range item.Value(name).Lacks {
			if !slices.Contains(lacks, lack) {
				lacks = append(lacks, lack)
			}
		}
	}
	return lacks
}
