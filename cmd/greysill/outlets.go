package main

import (
	"bufio"
	"fmt"
	"time"

	"greysill/checker/report"
)

// outlets are the reports of one review, open for writing.
type outlets struct {
	job     *job
	console console
	open    []outlet
	spoken  bool // a report goes to standard output
}

// outlet is one report and the place it goes to.
type outlet struct {
	report.Report
	buffer *bufio.Writer
	place  writable // nil for standard output
}

// begin opens every report that is wanted.
func (o *outlets) begin() error {
	for _, t := range o.job.targets {
		if err := o.add(t); err != nil {
			return err
		}
	}
	return nil
}

func (o *outlets) add(t target) error {
	var (
		sink    = o.console.out
		options = o.job.options(sink)
		place   writable
	)
	if t.file == "-" {
		o.spoken = true
	} else {
		opened, err := openTarget(t.file)
		if err != nil {
			return err
		}
		sink, place, options = opened, opened, o.job.options(nil)
	}
	options.Figures, options.Strict, options.Follow, options.AsOf = o.job.figures, o.job.strict, o.job.watch, o.job.day.Format(time.DateOnly)
	buffer := bufio.NewWriter(sink)
	begun, err := report.New(t.kind, buffer, options)
	o.open = append(o.open, outlet{begun, buffer, place})
	return err
}

// design adds one design to every report. When none goes to standard output,
// standard error says in a line what the design came to.
func (o *outlets) design(j *report.Judged) error {
	for _, out := range o.open {
		if err := out.Design(j); err != nil {
			return err
		}
	}
	if !o.spoken {
		if len(j.Problems) > 0 {
			fmt.Fprintln(o.console.err, j.Problems)
		}
		fmt.Fprintln(o.console.err, report.Line(j))
	}
	return nil
}

// finish ends every report and puts the files in their places.
func (o *outlets) finish(passedOver []skipped) error {
	names := make([]string, len(passedOver))
	for i, s := range passedOver {
		names[i] = s.file + ": " + s.why
	}
	for _, out := range o.open {
		if err := out.Close(names); err != nil {
			return err
		}
		if err := out.buffer.Flush(); err != nil {
			return err
		}
	}
	for _, out := range o.open {
		if out.place != nil {
			if err := out.place.commit(); err != nil {
				return err
			}
		}
	}
	return nil
}

// discard drops what was not finished, so that no report is ever half there.
func (o *outlets) discard() {
	for _, out := range o.open {
		if out.place != nil {
			out.place.discard()
		}
	}
}
