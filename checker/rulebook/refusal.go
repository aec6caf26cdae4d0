package rulebook

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
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
		return f.noFunction(e.Location, name)
	}
	if name := unsafe.FindStringSubmatch(e.Message); name != nil {
		return f.problemAt(e.Location, "nothing gives "+source.Quote(name[1])+" a value", "a name that the file defines or some … in binds", "")
	}
	if strings.HasPrefix(e.Message, "yaml: ") {
		return f.badDeclaration(e)
	}
	return f.problemAt(e.Location, hidden(e.Message), hidden(details(e)), "")
}

// badDeclaration words what is wrong with the YAML of a METADATA block, whose lines
// OPA counts from the line below the one that opens it.
func (f *file) badDeclaration(e *ast.Error) source.Problem {
	opened, at := 0, *e.Location
	for i, line := range strings.SplitN(string(f.text), "\n", at.Row+1)[:at.Row] {
		if strings.TrimSpace(strings.TrimLeft(line, "# \t")) == "METADATA" {
			opened = i + 1
		}
	}
	at.Row, at.Col = opened, 1
	said := inBlock.ReplaceAllStringFunc(e.Message, func(line string) string {
		row, _ := strconv.Atoi(line[len("line "):])
		if row += opened; at.Row == opened {
			at.Row = row
		}
		return fmt.Sprintf("line %d", row)
	})
	said = strings.Join(strings.Fields(strings.TrimPrefix(said, "yaml: ")), " ")
	return f.problemAt(&at, "the METADATA block cannot be read: "+said, "YAML with title, description and custom", "")
}

// noFunction words a call of a function that there is not.
func (f *file) noFunction(at *ast.Location, name string) source.Problem {
	known := slices.DeleteFunc(slices.Clone(ruleBuiltins), func(name string) bool { return strings.HasPrefix(name, "internal.") })
	expected, remedy := suggestion(name, known)
	return f.problemAt(at, "there is no function "+source.Quote(name)+" for rules", expected, remedy)
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
	inBlock   = regexp.MustCompile(`line \d+`)
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
