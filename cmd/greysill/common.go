package main

import (
	"fmt"
	"io"
	"os"

	"golang.org/x/term"

	"greysill/checker/quantity"
	"greysill/checker/report"
	"greysill/checker/rulebook"
	"greysill/checker/source"
	"greysill/rules"
)

// common are the flags that several commands share.
type common struct {
	units  string
	rules  string
	region string
	amend  []string
}

func addUnits(flags *flagSet) *common {
	f := &common{}
	flags.StringVar(&f.units, "units", "", "show quantities in `us|si`; else in the design's own units")
	return f
}

func addRules(flags *flagSet) *common {
	f := &common{}
	f.addBase(flags)
	return f
}

func (f *common) addBase(flags *flagSet) {
	flags.StringVar(&f.rules, "rules", "", "use the rule book in the folder `DIR` in place of the one built in")
}

func addCommon(flags *flagSet) *common {
	f := addUnits(flags)
	f.addBase(flags)
	flags.StringVar(&f.region, "region", "", "use the amendment of the region `CODE` (ISO 3166-2, such as US-UT) in place of that of the design's location")
	flags.StringArrayVar(&f.amend, "amend", nil, "lay the amendment in the folder `DIR` upon the rules; repeatable, the last one wins")
	return f
}

func (f *common) check() error {
	switch quantity.System(f.units) {
	case "", quantity.US, quantity.SI:
		return nil
	}
	return fmt.Errorf("--units: no such system of units: %q; us and si are known", f.units)
}

// books gives the rule books in force. Each folder of rules is read as a world of
// its own: no link in it leads out.
func (f *common) books() (*rulebook.Books, error) {
	base := rulebook.Layer{Name: rulebook.BaseName, FS: rules.FS}
	var err error
	if f.rules != "" {
		if base, err = folder("--rules", f.rules); err != nil {
			return nil, err
		}
	}
	local := make([]rulebook.Layer, len(f.amend))
	for i, dir := range f.amend {
		if local[i], err = folder("--amend", dir); err != nil {
			return nil, err
		}
	}
	books := rulebook.NewBooks(base, local...)
	if f.region != "" && !books.Amended(f.region) {
		return nil, fmt.Errorf("greysill: --region: %w", noSuchRegion(f.region, books.Regions()))
	}
	return books, nil
}

func folder(flag, dir string) (rulebook.Layer, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return rulebook.Layer{}, fmt.Errorf("greysill: %s: %s is not a folder that can be read", flag, dir)
	}
	return rulebook.Layer{Name: dir, FS: root.FS()}, nil
}

func noSuchRegion(code string, codes []string) error {
	hint := "greysill regions lists them"
	if near := source.Nearest(code, codes); near != "" {
		hint = "did you mean " + near + "?"
	}
	return fmt.Errorf("there is no amendment for the region %q; %s", code, hint)
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
