package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"time"

	"greysill/checker"
	"greysill/checker/compare"
	"greysill/checker/design"
	"greysill/checker/report"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

const reviewHelp = `greysill review [flags] FILE|DIR|-… judges designs and writes reports. Folders are
walked for *.json files whose format is a greywater design; others are named as
skipped. A dash reads standard input.

Exit status: 0 nothing failed, 1 something failed, 2 the check could not be made;
with several files, the worst.
`

// reviewFlags are the flags of review.
type reviewFlags struct {
	*common
	reports []string
	asOf    string
	name    string
	strict  bool
	figures bool
	against string
	watch   bool // the flag --follow
}

func addReviewFlags(flags *flagSet) *reviewFlags {
	f := &reviewFlags{common: addCommon(flags)}
	flags.StringArrayVar(&f.reports, "report", nil, "write a report of `KIND[=FILE]` (text, json, sarif, alerts, junit, markdown, known, sheet) to FILE or to standard output; repeatable (default text)")
	flags.StringVar(&f.asOf, "as-of", "", "the `DATE`, YYYY-MM-DD, on which variances must not have expired (default today)")
	flags.StringVar(&f.name, "name", "", "the `PATH` to name standard input by")
	flags.BoolVar(&f.strict, "strict", false, "a warning also gives exit status 1")
	flags.StringVar(&f.against, "against", "", "hold what is found against the known faults (or the json report) in `FILE`; only what is new since then fails")
	flags.BoolVar(&f.watch, "follow", false, "judge again whenever a design, a rule or an amendment changes; an open sheet shows it")
	flags.BoolVar(&f.figures, "figures", false, "put every computed figure into the json report")
	return f
}

func review(ctx context.Context, c console, args []string) int {
	flags := newFlags("review", reviewHelp)
	f := addReviewFlags(flags)
	operands, done, err := flags.parse(c, args)
	if done {
		return exitPass
	}
	job, err := f.job(operands, err)
	if err != nil {
		return badUsage(c, "review", err)
	}
	go design.Prepare() // takes about as long as the rules
	if f.watch {
		return job.follow(ctx, c, operands)
	}
	return job.once(ctx, c, operands)
}

// job is one review, ready to run.
type job struct {
	*reviewFlags
	targets []target
	day     time.Time
	books   *rulebook.Books
	past    *compare.Past // what an earlier report found, nil when there is none
}

// job checks what the command line asks for, err being what parsing it gave.
func (f *reviewFlags) job(operands []string, err error) (*job, error) {
	if err != nil {
		return nil, err
	}
	if len(operands) == 0 {
		return nil, errors.New("no design to review; name a file, a folder, or - for standard input")
	}
	if err := f.check(); err != nil {
		return nil, err
	}
	if err := naming(f.name, operands); err != nil {
		return nil, err
	}
	if f.watch && slices.Contains(operands, "-") {
		return nil, errors.New("--follow needs files; standard input is read once")
	}
	j := &job{reviewFlags: f}
	if j.targets, err = parseTargets(f.reports); err != nil {
		return nil, err
	}
	j.day, err = day(f.asOf)
	return j, err
}

// naming refuses a name for standard input when that is not read.
func naming(name string, operands []string) error {
	if name != "" && !slices.Contains(operands, "-") {
		return errors.New("--name is for standard input; give - as the file")
	}
	return nil
}

// day reads the date of --as-of, today when there is none.
func day(text string) (time.Time, error) {
	if text == "" {
		return time.Now(), nil
	}
	d, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return d, fmt.Errorf("--as-of: %q is no date; expected one such as 2026-05-31", text)
	}
	return d, nil
}

// spare refuses a report that would write over a design, and a sheet of several.
func (j *job) spare(designs []string) error {
	for _, t := range j.targets {
		if t.kind == "sheet" && len(designs) != 1 {
			return fmt.Errorf("--report sheet: a sheet is handed in for one design, and this run has %d; review them one by one to have a sheet of each", len(designs))
		}
		for _, d := range designs {
			if t.file != "-" && same(t.file, d) {
				return fmt.Errorf("--report %s=%s would write over the design; name another file", t.kind, t.file)
			}
		}
	}
	return nil
}

func same(a, b string) bool {
	one, err := os.Stat(a)
	if err != nil {
		return filepath.Clean(a) == filepath.Clean(b)
	}
	other, err := os.Stat(b)
	return err == nil && os.SameFile(one, other)
}

// run judges the files and writes the reports. The worst outcome is the exit
// status.
func (j *job) run(ctx context.Context, c console, in inputs) int {
	out := &outlets{job: j, console: c}
	if err := out.begin(); err != nil {
		return unusable(c, fmt.Errorf("greysill: cannot write: %w", err))
	}
	defer out.discard()
	ahead := newProgress(c, out.spoken, len(in.files))
	defer ahead.clear()
	check, worst := checker.New(checker.WithBooks(j.books), checker.InRegion(j.region), checker.AsOf(j.day)), exitPass
	err := check.CheckAll(ctx, j.files(c, in.files), func(r *checker.Result) error {
		if r.Rules != nil {
			return r.Rules
		}
		ahead.step()
		found := j.judged(r)
		worst = max(worst, j.status(r, found))
		return out.design(found)
	})
	if err == nil {
		err = out.finish(in.skipped)
	}
	var rules source.Problems
	if errors.As(err, &rules) {
		return unusable(c, rules)
	}
	if err != nil {
		return unusable(c, fmt.Errorf("greysill: %w", err))
	}
	return worst
}

func (j *job) judged(r *checker.Result) *report.Judged {
	found := &report.Judged{Name: r.Name, Design: r.Design, Figures: r.Figures, Verdict: r.Verdict, Problems: r.Problems}
	if r.Book != nil {
		found.Book = r.Book
	}
	if j.past != nil && r.Verdict != nil {
		found.Since = j.past.With(r.Name, r.Verdict)
	}
	return found
}

// remember reads the earlier report that findings are held against.
func (j *job) remember() error {
	if j.against == "" {
		return nil
	}
	text, err := os.ReadFile(j.against)
	if err != nil {
		return fmt.Errorf("greysill: --against: cannot read %s: %w", j.against, plain(err))
	}
	past, problems := compare.Read(j.against, text)
	if len(problems) > 0 {
		return problems
	}
	j.past = past
	return nil
}

// ahead loads the rules that the first design will want while it is being read.
// The region is a guess, and a wrong one costs nothing but time.
func (j *job) ahead(ctx context.Context, files []string) {
	region := j.region
	if region == "" {
		region = glimpse(files[0])
	}
	_, _ = j.books.In(ctx, region)
}

// glimpse looks for a region near the beginning of a design. It leaves alone what
// can be read only once.
func glimpse(file string) string {
	if info, err := os.Stat(file); err != nil || !info.Mode().IsRegular() {
		return ""
	}
	f, err := os.Open(file)
	if err != nil {
		return ""
	}
	defer f.Close()
	head, _ := io.ReadAll(io.LimitReader(f, 4096))
	if found := regionEntry.FindSubmatch(head); found != nil {
		return string(found[1])
	}
	return ""
}

var regionEntry = regexp.MustCompile(`"region"\s*:\s*"([^"]*)"`)

// status gives the exit status that one design comes to. Where findings are held
// against an earlier report, only new ones fail.
func (j *job) status(r *checker.Result, found *report.Judged) int {
	status := r.Status()
	switch {
	case status == rulebook.Unjudged:
		return exitUnjudged
	case found.Since != nil && found.Since.Fails(j.strict), found.Since == nil && status == rulebook.Fail, found.Since == nil && status == rulebook.Warn && j.strict:
		return exitFail
	}
	return exitPass
}

// files gives the designs to judge, standard input read and named.
func (j *job) files(c console, names []string) []checker.File {
	files := make([]checker.File, len(names))
	for i, name := range names {
		files[i] = checker.File{Name: name}
		if name == "-" {
			files[i] = standardInput(c, j.name)
		}
	}
	return files
}

// standardInput reads a design from standard input.
func standardInput(c console, name string) checker.File {
	if name == "" {
		name = "-"
	}
	text, problems := source.ReadAll(name, c.in)
	return checker.File{Name: name, Text: text, Problems: problems, Read: true}
}
