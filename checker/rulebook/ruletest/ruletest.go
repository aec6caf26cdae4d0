// Package ruletest runs the Rego tests of a layer of rules with the language
// that rules have, and says which lines of the rules no test reaches.
package ruletest

import (
	"cmp"
	"context"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"

	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// Report is what a run of tests came to.
type Report struct {
	Tests    int             // that ran
	Problems source.Problems // tests that fail or refer to nothing, and tests that rules lack
	Missed   source.Problems // places in the rules that no test reaches
	Coverage float64         // per cent of the rules' lines
}

// timeout bounds one test.
const timeout = 10 * time.Second

// kinds are the tests that every rule has, by the start of their names.
var kinds = []string{"test_pass_", "test_fail_", "test_not_shown_"}

// suite is the rules and tests of a layer as parsed, by file.
type suite struct {
	layer rulebook.Layer
	rules map[string]*ast.Module
	tests map[string]*ast.Module
}

// Run runs the tests of the layer. Its rules must load; an error means that they
// or the tests do not even compile, or that they went past their bounds: then what
// cannot be called off is left behind.
func Run(ctx context.Context, layer rulebook.Layer) (*Report, error) {
	return within(ctx, bounds{time: 2 * time.Minute, memory: 512 << 20}, func(ctx context.Context) (*Report, error) {
		return run(ctx, layer)
	})
}

func run(ctx context.Context, layer rulebook.Layer) (*Report, error) {
	s, err := parse(layer)
	if err != nil {
		return nil, err
	}
	report := &Report{Problems: append(s.incomplete(), s.dangling()...)}
	coverage := cover.New()
	results, err := s.run(ctx, coverage)
	if err != nil {
		return nil, err
	}
	for _, r := range results {
		report.Tests++
		if !r.Pass() {
			report.Problems = append(report.Problems, failure(r))
		}
	}
	report.addCoverage(coverage.Report(s.rules))
	return report, nil
}

func parse(layer rulebook.Layer) (*suite, error) {
	s := &suite{layer: layer, rules: map[string]*ast.Module{}, tests: map[string]*ast.Module{}}
	names, err := fs.Glob(layer.FS, "*/*.rego")
	if err != nil {
		return nil, err
	}
	options := ast.ParserOptions{Capabilities: rulebook.TestCapabilities(), ProcessAnnotation: true}
	for _, name := range names {
		text, err := layer.Read(name)
		if err != nil {
			return nil, err
		}
		file := path.Join(layer.Name, name)
		module, err := ast.ParseModuleWithOpts(file, string(text), options)
		if err != nil {
			return nil, err
		}
		if strings.HasSuffix(name, "_test.rego") {
			s.tests[file] = module
		} else {
			s.rules[file] = module
		}
	}
	return s, nil
}

func (s *suite) all() map[string]*ast.Module {
	all := map[string]*ast.Module{}
	for _, modules := range []map[string]*ast.Module{s.rules, s.tests} {
		for file, m := range modules {
			all[file] = m.Copy()
		}
	}
	return all
}

// compiler gives a fresh compiler without the rule input's schema: tests make up
// inputs of their own, wrong ones too.
func compiler() *ast.Compiler {
	return ast.NewCompiler().WithCapabilities(rulebook.TestCapabilities()).WithEnablePrintStatements(true)
}

func (s *suite) run(ctx context.Context, coverage *cover.Cover) ([]*tester.Result, error) {
	ran, err := tester.NewRunner().SetCompiler(compiler()).SetStore(inmem.New()).SetModules(s.all()).SetTimeout(timeout).
		CapturePrintOutput(true).RaiseBuiltinErrors(true).SetCoverageQueryTracer(coverage).RunTests(ctx, nil)
	if err != nil {
		return nil, err
	}
	var results []*tester.Result
	for r := range ran {
		results = append(results, r)
	}
	slices.SortFunc(results, func(a, b *tester.Result) int {
		return cmp.Or(cmp.Compare(a.Location.File, b.Location.File), cmp.Compare(a.Location.Row, b.Location.Row))
	})
	return results, nil
}

func failure(r *tester.Result) source.Problem {
	p := problem(r.Location, r.Name+" fails")
	if r.Error != nil {
		p.Found = r.Name + " cannot be run: " + r.Error.Error()
	}
	if r.Skip {
		p.Found = r.Name + " is skipped"
	}
	if len(r.Output) > 0 {
		p.Found += "; it printed " + source.Quote(string(r.Output))
	}
	return p
}

func problem(at *ast.Location, found string) source.Problem {
	return source.Problem{Position: source.Position{File: at.File, Line: at.Row, Column: at.Col}, Found: found}
}

// incomplete finds the rules that lack a test of one of the kinds.
func (s *suite) incomplete() source.Problems {
	var problems source.Problems
	for _, file := range sorted(s.rules) {
		name := strings.TrimSuffix(file, ".rego") + "_test.rego"
		module := s.tests[name]
		if module == nil {
			problems = append(problems, source.Problem{Position: source.Position{File: file}, Found: "the rule has no tests", Expected: name})
			continue
		}
		if got, want := module.Package.Path.String(), s.rules[file].Package.Path.String()+"_test"; got != want {
			problems = append(problems, problem(module.Package.Location, fmt.Sprintf("the package is %s; expected %s", got, want)))
		}
		for _, kind := range s.wanted(file) {
			if !slices.ContainsFunc(module.Rules, func(r *ast.Rule) bool { return strings.HasPrefix(string(r.Head.Name), kind) }) {
				problems = append(problems, problem(module.Package.Location, "the rule has no test whose name begins with "+kind))
			}
		}
	}
	return problems
}

func (s *suite) wanted(file string) []string {
	if slices.ContainsFunc(s.rules[file].Rules, func(r *ast.Rule) bool { return r.Head.Name == "excused" }) {
		return append(slices.Clone(kinds), "test_excused_")
	}
	return kinds
}

// dangling finds what the tests refer to that is not there.
func (s *suite) dangling() source.Problems {
	c := compiler()
	c.Compile(s.all())
	var problems source.Problems
	for _, file := range sorted(s.tests) {
		compiled := c.Modules[file]
		if compiled == nil {
			continue // the run reports what does not compile
		}
		for _, r := range rulebook.Dangling(c, compiled) {
			at := r[0].Location
			if at == nil {
				at = compiled.Package.Location
			}
			problems = append(problems, problem(at, "there is no "+r.String()))
		}
	}
	return problems
}

func (r *Report) addCoverage(c cover.Report) {
	r.Coverage = c.Coverage
	for _, file := range slices.Sorted(maps.Keys(c.Files)) {
		for _, missed := range c.Files[file].NotCovered {
			at := source.Position{File: file, Line: missed.Start.Row, Column: missed.Start.Col}
			r.Missed = append(r.Missed, source.Problem{Position: at, Found: "no test reaches this"})
		}
	}
}

func sorted(modules map[string]*ast.Module) []string { return slices.Sorted(maps.Keys(modules)) }
