// Package checker checks designs of household greywater systems: it reads a
// design, works out what the drawing implies, and holds that against the rule
// book. It is the way in for another program.
//
//	c, err := checker.New()
//	result := c.Check(ctx, "design.json")
//	fmt.Println(result.Status())
package checker

import (
	"context"
	"runtime"
	"sync"
	"time"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/rulebook"
	"greysill/checker/source"
	"greysill/rules"
)

// Checker checks designs by one rule book. It is safe for concurrent use.
type Checker struct {
	book *rulebook.Book
	asOf time.Time
}

// Option is one choice about a Checker.
type Option func(*choices)

type choices struct {
	layers []rulebook.Layer
	book   *rulebook.Book
	asOf   time.Time
}

// WithLayers puts layers upon the base rules, a region's before a place's; the
// later ones win.
func WithLayers(layers ...rulebook.Layer) Option {
	return func(c *choices) { c.layers = append(c.layers, layers...) }
}

// WithBook checks by a book that is loaded already, in place of the base rules
// and any layers.
func WithBook(b *rulebook.Book) Option {
	return func(c *choices) { c.book = b }
}

// AsOf sets the day that variances are held against; without it, today.
func AsOf(day time.Time) Option {
	return func(c *choices) { c.asOf = day }
}

// New loads the rules. An error is source.Problems: everything that is wrong
// with them.
func New(options ...Option) (*Checker, error) {
	c := choices{asOf: time.Now()}
	for _, choose := range options {
		choose(&c)
	}
	go design.Prepare() // takes about as long as the rules
	if c.book == nil {
		base := rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS}
		book, err := rulebook.Load(context.Background(), append([]rulebook.Layer{base}, c.layers...)...)
		if err != nil {
			return nil, err
		}
		c.book = book
	}
	return &Checker{book: c.book, asOf: c.asOf}, nil
}

// Book gives the rules in force.
func (c *Checker) Book() *rulebook.Book { return c.book }

// Result is everything that was found for one design. Design, Figures and
// Verdict are nil when there are Problems.
type Result struct {
	Name     string // of the file
	Design   *design.Design
	Figures  *figures.Figures
	Verdict  *rulebook.Verdict
	Problems source.Problems // what keeps the file from being judged
}

// Status gives what the check came to, warnings told from passes.
func (r *Result) Status() rulebook.Status {
	if r.Verdict == nil {
		return rulebook.Unjudged
	}
	return r.Verdict.Status()
}

// Check checks the design in the file.
func (c *Checker) Check(ctx context.Context, path string) *Result {
	return c.check(ctx, File{Name: path})
}

// CheckBytes checks the design that the text holds. Messages call it by the
// name.
func (c *Checker) CheckBytes(ctx context.Context, name string, text []byte) *Result {
	return c.check(ctx, File{Name: name, Text: text, Read: true})
}

// File is one design to check: a file's name, or what was read already, from
// standard input for instance.
type File struct {
	Name     string
	Read     bool            // Text and Problems say what was read; else the file of that name is read
	Text     []byte          // of the design
	Problems source.Problems // what kept it from being read
}

func (f *File) design() (*design.Design, source.Problems) {
	switch {
	case !f.Read:
		return design.ReadFile(f.Name)
	case len(f.Problems) > 0:
		return nil, f.Problems
	}
	return design.Read(f.Name, f.Text)
}

func (c *Checker) check(ctx context.Context, f File) *Result {
	r := &Result{Name: f.Name}
	if r.Design, r.Problems = f.design(); len(r.Problems) > 0 {
		r.Design = nil
		return r
	}
	r.Figures = figures.Compute(r.Design)
	r.Verdict = c.book.Judge(ctx, r.Figures, c.asOf)
	return r
}

// ahead is how many designs for each core may be checked before the one whose
// turn it is, so that one large design does not hold up the others and a
// thousand results are never in memory at once.
const ahead = 4

// CheckAll checks the designs on all cores and hands each result to the function
// in the order of the files. It ends early, with the error, when
// the function returns one or the context ends.
func (c *Checker) CheckAll(ctx context.Context, files []File, handle func(*Result) error) error {
	var wg sync.WaitGroup
	defer wg.Wait()
	checking, stop := context.WithCancel(ctx)
	defer stop()

	type task struct {
		File
		turn chan *Result
	}
	cores := runtime.GOMAXPROCS(0)
	tasks := make(chan task)
	turns := make(chan chan *Result, ahead*cores)
	wg.Go(func() {
		defer close(turns)
		defer close(tasks)
		for _, f := range files {
			turn := make(chan *Result, 1)
			select {
			case turns <- turn:
				tasks <- task{f, turn}
			case <-checking.Done():
				return
			}
		}
	})
	for range cores {
		wg.Go(func() {
			for t := range tasks {
				t.turn <- c.check(checking, t.File)
			}
		})
	}
	for turn := range turns {
		r := <-turn
		if err := ctx.Err(); err != nil {
			return err
		}
		if err := handle(r); err != nil {
			return err
		}
	}
	return ctx.Err()
}
