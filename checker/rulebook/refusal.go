package rulebook

import (
	"errors"
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"greysill/checker/source"
)

// refusals turns OPA's errors into problems. OPA names values that it made
// itself; the reader never wrote those names.
func (f *file) refusals(err error) source.Problems {
	var errs ast.Errors
	if !errors.As(err, &errs) {
		return source.Problems{f.whole(err.Error(), "", "")}
	}
	var problems source.Problems
	for _, e := range errs {
		problems = append(problems, f.refusal(e))
	}
	return problems
}

func (f *file) refusal(e *ast.Error) source.Problem {
	if detail, ok := e.Details.(*ast.RefErrInvalidDetail); ok && detail.Pos > 0 && len(detail.OneOf) > 0 {
		return f.unknownField(e, detail)
	}
	if name, ok := undefinedFunction(e); ok {
		expected, remedy := suggestion(name, slices.DeleteFunc(slices.Clone(ruleBuiltins), func(name string) bool { return strings.HasPrefix(name, "internal.") }))
		return f.problemAt(e.Location, "there is no function "+source.Quote(name)+" for rules", expected, remedy)
	}
	if name := unsafe.FindStringSubmatch(e.Message); name != nil {
		return f.problemAt(e.Location, "nothing gives "+source.Quote(name[1])+" a value", "a name that the file defines or some … in binds", "")
	}
	return f.problemAt(e.Location, hidden(e.Message), hidden(details(e)), "")
}

// unknownField words a reference to something that is not in its object.
func (f *file) unknownField(e *ast.Error, detail *ast.RefErrInvalidDetail) source.Problem {
	wrong := detail.Ref[detail.Pos]
	at := e.Location
	if wrong.Location != nil {
		at = wrong.Location
	}
	names := make([]string, len(detail.OneOf))
	for i, v := range detail.OneOf {
		names[i] = strings.Trim(v.String(), `"`)
	}
	written := strings.Trim(wrong.String(), `"`)
	expected, remedy := suggestion(written, names)
	return f.problemAt(at, "there is no "+source.Quote(written)+" in "+hidden(detail.Ref[:detail.Pos].String()), expected, remedy)
}

var (
	generated = regexp.MustCompile(`__local\d+__`)
	undefined = regexp.MustCompile(`^undefined function (\S+)$`)
	unsafe    = regexp.MustCompile(`^var (\S+) is unsafe$`)
)

// hidden replaces the names that OPA made itself.
func hidden(text string) string { return generated.ReplaceAllString(text, "…") }

// undefinedFunction gives the name of the function that there is not.
func undefinedFunction(e *ast.Error) (string, bool) {
	if name := undefined.FindStringSubmatch(e.Message); name != nil {
		return name[1], true
	}
	return "", false
}

// details gives what OPA knows besides, such as the types of both sides. Of a
// syntax error it gives the line, which the caret shows.
func details(e *ast.Error) string {
	if e.Details == nil || e.Code == ast.ParseErr {
		return ""
	}
	var said []string
	for _, line := range e.Details.Lines() {
		if line = strings.Join(strings.Fields(line), " "); strings.Trim(line, "^ ") != "" {
			said = append(said, line)
		}
	}
	return strings.Join(said, ", ")
}
