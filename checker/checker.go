// Package checker checks designs of household greywater systems: it reads a
// design, works out what the drawing implies, and holds that against the rule
// book. It is the way in for another program.
//
//	result := checker.New().Check(ctx, "design.json")
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

// Checker checks designs, each by the rule book of its region. It is safe for
// concurrent use.
type Checker struct {
	books  *rulebook.Books
	region string
	asOf   time.Time
}

// Option is one choice about a Checker.
type Option func(*choices)

type choices struct {
	layers []rulebook.Layer
	books  *rulebook.Books
	region string
	asOf   time.Time
}

// WithLayers lays local amendments upon the base rules and the region's; the
// later ones win.
func WithLayers(layers ...rulebook.Layer) Option {
	return func(c *choices) { c.layers = append(c.layers, layers...) }
}

// WithBooks checks by these books, in place of those built in and any layers.
func WithBooks(b *rulebook.Books) Option {
	return func(c *choices) { c.books = b }
}

// InRegion judges every design as if it lay in the region, an ISO 3166-2 code;
// without it, each lies where its location says.
func InRegion(code string) Option {
	return func(c *choices) { c.region = code }
}

// AsOf sets the day that variances are held against; without it, today.
func AsOf(day time.Time) Option {
	return func(c *choices) { c.asOf = day }
}

// New makes a Checker. Rules are loaded when the first design of a region is
// checked.
func New(options ...Option) *Checker {
	c := choices{asOf: time.Now()}
	for _, choose := range options {
		choose(&c)
	}
	go design.Prepare() // takes about as long as the rules
	if c.books == nil {
		c.books = rulebook.NewBooks(rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS}, c.layers...)
	}
	return &Checker{books: c.books, region: c.region, asOf: c.asOf}
}

// Book gives the rules in force in a region, an ISO 3166-2 code; the base and
// local amendments where the region has none of its own, or for "". An error is
// source.Problems: everything that is wrong with the rules.
func (c *Checker) Book(ctx context.Context, region string) (*rulebook.Book, error) {
	if c.region != "" {
		region = c.region
	}
	return c.books.In(ctx, region)
}

// Result is everything that was found for one design. Design, Figures and
// Verdict are nil when there are Problems, Figures and Verdict when the rules
// are at fault.
type Result struct {
	Name     string // of the file
	Design   *design.Design
	Figures  *figures.Figures
	Verdict  *rulebook.Verdict
	Problems source.Problems // what keeps the file from being judged
	Book     *rulebook.Book  // the rules that the design was held against
	Rules    error           // what is wrong with the rules in force where the design lies
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
	if r.Book, r.Rules = c.Book(ctx, r.Design.Location.Region); r.Rules != nil {
		return r
	}
	r.Figures = figures.Compute(r.Design)
	r.Verdict = r.Book.Judge(ctx, r.Figures, c.asOf)
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
