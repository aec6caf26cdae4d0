// Command greysill checks designs of household greywater systems on paper: it
// reads a design, works out what the drawing implies, holds that against an
// editable rule book, and says what fails, by how much, and what would put it
// right.
//
// Exit status: 0 when nothing failed, 1 when something failed, 2 when the check
// could not be made.
package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime/debug"
	"strings"
	"syscall"
)

// version is the release that --version names.
const version = "0.1.0"

// The exit statuses.
const (
	exitPass     = 0
	exitFail     = 1
	exitUnjudged = 2
)

func main() {
	collectLess()
	go interrupted()
	out := &checked{w: os.Stdout}
	status := run(context.Background(), console{os.Stdin, out, os.Stderr}, os.Args[1:])
	if out.err != nil {
		fmt.Fprintf(os.Stderr, "greysill: cannot write to standard output: %v\n", plain(out.err))
		status = exitUnjudged
	}
	os.Exit(status)
}

// interrupted ends the program at once when it is asked to end, without leaving
// half a report behind.
func interrupted() {
	asked := make(chan os.Signal, 1)
	signal.Notify(asked, os.Interrupt, syscall.SIGTERM)
	<-asked
	removeUnfinished()
	fmt.Fprintln(os.Stderr, "greysill: interrupted")
	os.Exit(exitUnjudged)
}

// checked is standard output that remembers whether it could be written to, so
// that no output is lost with exit status 0.
type checked struct {
	w   *os.File
	err error
}

func (c *checked) Write(text []byte) (int, error) {
	n, err := c.w.Write(text)
	if err != nil && c.err == nil {
		c.err = err
	}
	return n, err
}

// collectLess lets the heap grow to five times what is in use before it is
// collected, unless GOGC says otherwise. One design is then judged before the
// first collection, a thousand take a fifth less time, and the worst file takes
// less than 200 MiB.
func collectLess() {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
	}
}

// console is what a command reads from and writes to.
type console struct {
	in       io.Reader
	out, err io.Writer
}

// verb is one thing that greysill does.
type verb struct {
	name    string
	takes   string // its operands
	summary string // one line, a verb phrase
	run     func(ctx context.Context, c console, args []string) int
}

func verbs() []verb {
	return []verb{
		{"review", "[flags] FILE|DIR|-…", "judge designs and write reports", review},
		{"rules", "[flags] [ID]", "list the rule book in force, or explain one rule", listRules},
		{"regions", "[flags] [CODE…]", "compare what the amendments of the regions change", listRegions},
		{"try", "[flags] DIR", "try an amendment: its tests, its limits, and that nothing missing ever passes", try},
		{"figures", "[flags] FILE", "print what the drawing implies, with formulas and sources", printFigures},
		{"start", "[--amendment] [DIR]", "write a starter design that passes, or a local amendment to change", start},
	}
}

func run(ctx context.Context, c console, args []string) int {
	if len(args) == 0 {
		fmt.Fprint(c.err, usage())
		return exitUnjudged
	}
	switch args[0] {
	case "-h", "--help", "help":
		if len(args) == 2 && args[0] == "help" {
			return run(ctx, c, []string{args[1], "--help"})
		}
		fmt.Fprint(c.out, usage())
		return exitPass
	case "-V", "--version":
		fmt.Fprintf(c.out, "greysill %s\n", version)
		return exitPass
	}
	for _, v := range verbs() {
		if v.name == args[0] {
			return v.run(ctx, c, args[1:])
		}
	}
	return badUsage(c, "", fmt.Errorf("no such command: %q; the commands are %s", args[0], verbNames()))
}

func verbNames() string {
	var names []string
	for _, v := range verbs() {
		names = append(names, v.name)
	}
	return strings.Join(names, ", ")
}

func usage() string {
	var b strings.Builder
	b.WriteString("greysill checks the design of a household greywater system before anybody digs.\n\n")
	for _, v := range verbs() {
		fmt.Fprintf(&b, "  greysill %s %s\n      %s\n", v.name, v.takes, v.summary)
	}
	b.WriteString(`
  greysill COMMAND --help explains a command; greysill --version names the release.

Exit status: 0 nothing failed, 1 something failed, 2 the check could not be made.
Local code and the authority having jurisdiction decide; greysill only helps to
get the drawing right before they see it.
`)
	return b.String()
}

// badUsage reports a command line that cannot be followed.
func badUsage(c console, command string, err error) int {
	fmt.Fprintf(c.err, "greysill: %v\n", err)
	fmt.Fprintf(c.err, "Try %s for help.\n", strings.Join(strings.Fields("greysill "+command+" --help"), " "))
	return exitUnjudged
}
