package main

import (
	"context"
	"errors"

	"greysill/checker/cost"
	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/report"
	"greysill/checker/source"
)

const figuresHelp = `greysill figures [flags] FILE prints what the drawing in FILE implies, as a sheet of
calculations: each figure with its formula, what it was worked out from and where
that stands in the file, and the source. A dash reads standard input. With a price
list it also prints what the quantities cost, and what the list has no price of.
`

func printFigures(_ context.Context, c console, args []string) int {
	flags := newFlags("figures", figuresHelp)
	common := addUnits(flags)
	name := flags.String("name", "", "the `PATH` to name standard input by")
	prices := flags.String("prices", "", "work the costs out by the price list `FILE` (format greysill-prices/1)")
	operands, done, err := flags.parse(c, args)
	if done {
		return exitPass
	}
	if err == nil && len(operands) != 1 {
		err = errors.New("figures takes one design")
	}
	if err == nil {
		err = common.check()
	}
	if err == nil {
		err = naming(*name, operands)
	}
	if err != nil {
		return badUsage(c, "figures", err)
	}
	options := common.options(c.out)
	if flags.Changed("prices") {
		list, problems := cost.ReadFile(*prices)
		if len(problems) > 0 {
			return unusable(c, problems)
		}
		options.Prices = list
	}
	d, problems := read(c, operands[0], *name)
	if len(problems) > 0 {
		return unusable(c, problems)
	}
	return wrote(c, report.Figures(c.out, figures.Compute(d), options))
}

// read reads one design, from standard input for a dash.
func read(c console, file, name string) (*design.Design, source.Problems) {
	if file != "-" {
		return design.ReadFile(file)
	}
	in := standardInput(c, name)
	if len(in.Problems) > 0 {
		return nil, in.Problems
	}
	return design.Read(in.Name, in.Text)
}
