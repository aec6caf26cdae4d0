package main

import (
	"fmt"
	"os"
	"time"

	"golang.org/x/term"
)

// progress says on a terminal how far a long run is, while its report goes
// elsewhere.
type progress struct {
	console
	shown     bool
	done, all int
	last      time.Time
}

// newProgress is silent unless standard error is a terminal and the report goes to
// standard output, which is none: else the report itself, or a line for each design,
// shows how far it is.
func newProgress(c console, spoken bool, designs int) *progress {
	p := &progress{console: c, all: designs, last: time.Now()}
	standardError, isFile := c.err.(*os.File)
	out, checked := c.out.(*checked)
	p.shown = spoken && isFile && checked && term.IsTerminal(int(standardError.Fd())) && !term.IsTerminal(int(out.w.Fd()))
	return p
}

// step counts one more design.
func (p *progress) step() {
	if p.done++; p.shown && time.Since(p.last) > glances {
		p.last = time.Now()
		fmt.Fprintf(p.err, "\r%d of %d designs", p.done, p.all)
	}
}

// clear takes the line away.
func (p *progress) clear() {
	if p.shown {
		fmt.Fprint(p.err, "\r\x1b[K")
	}
}
