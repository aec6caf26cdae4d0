package main

import (
	"context"
	"fmt"
	"io"
	"os"

	"golang.org/x/term"

	"greysill/checker/quantity"
	"greysill/checker/report"
	"greysill/checker/rulebook"
	"greysill/rules"
)

// common are the flags that several commands share.
type common struct {
	units string
	rules string
}

func addUnits(flags *flagSet) *common {
	f := &common{}
	flags.StringVar(&f.units, "units", "", "show quantities in `us|si`; else in the design's own units")
	return f
}

func addCommon(flags *flagSet) *common {
	f := addUnits(flags)
	flags.StringVar(&f.rules, "rules", "", "use the rule book in the folder `DIR` in place of the one built in")
	return f
}

func (f *common) check() error {
	switch quantity.System(f.units) {
	case "", quantity.US, quantity.SI:
		return nil
	}
	return fmt.Errorf("--units: no such system of units: %q; us and si are known", f.units)
}

// book loads the rules in force. A folder of rules is read as a world of its own:
// no link in it leads out.
func (f *common) book(ctx context.Context) (*rulebook.Book, error) {
	if f.rules == "" {
		return rulebook.Load(ctx, rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS})
	}
	root, err := os.OpenRoot(f.rules)
	if err != nil {
		return nil, fmt.Errorf("greysill: --rules: %s is not a folder that can be read", f.rules)
	}
	return rulebook.Load(ctx, rulebook.Layer{Name: f.rules, FS: root.FS()})
}

// options says how a report to w is to look. Only a terminal gets colour, and
// only when NO_COLOR is not set (no-color.org) and the terminal is not dumb.
func (f *common) options(w io.Writer) report.Options {
	o := report.Options{Units: quantity.System(f.units), Version: version}
	out, ok := w.(*checked)
	if !ok || !term.IsTerminal(int(out.w.Fd())) {
		return o
	}
	o.Colour = os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
	if width, _, err := term.GetSize(int(out.w.Fd())); err == nil {
		o.Width = width
	}
	return o
}

// unusable reports why a check could not be made, a line for each reason.
func unusable(c console, err error) int {
	fmt.Fprintln(c.err, err)
	return exitUnjudged
}

// wrote turns the outcome of writing into an exit status.
func wrote(c console, err error) int {
	if err != nil {
		return unusable(c, fmt.Errorf("greysill: cannot write: %w", err))
	}
	return exitPass
}
