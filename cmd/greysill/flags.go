package main

import (
	"fmt"

	"github.com/spf13/pflag"
)

// flagSet is one command's flags and its help.
type flagSet struct {
	*pflag.FlagSet
	help string
}

func newFlags(command, help string) *flagSet {
	set := pflag.NewFlagSet(command, pflag.ContinueOnError)
	set.SortFlags = false
	set.Usage = func() {}
	set.BoolP("help", "h", false, "print this help")
	return &flagSet{set, help}
}

// parse reads a command line. It says that all is done when help was asked for
// and printed.
func (f *flagSet) parse(c console, args []string) (operands []string, done bool, err error) {
	if err := f.FlagSet.Parse(args); err != nil {
		return nil, false, err
	}
	if wanted, _ := f.GetBool("help"); wanted {
		fmt.Fprintf(c.out, "%s\nFlags:\n%s", f.help, f.FlagUsagesWrapped(80))
		return nil, true, nil
	}
	return f.Args(), false, nil
}
