package rulebook

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// The bounds of judging one design: by one rule, and by all of them. A design of
// the greatest size takes the base rules less than a second.
const (
	deadline = 5 * time.Second
	patience = 30 * time.Second
)

// answer is what a rule says of a design.
type answer struct {
	proved  map[string]bool
	excused map[string]string // the reasons
}

// ask evaluates the rule.
func (j *judgement) ask(ctx context.Context, input ast.Value) (answer, error) {
	if ctx.Err() != nil {
		return answer{}, context.Cause(ctx)
	}
	begun := time.Now()
	said, err := j.query.run(ctx, input, j.book.deadline)
	switch {
	case topdown.IsCancel(err) && ctx.Err() != nil:
		return answer{}, context.Cause(ctx)
	case topdown.IsCancel(err):
		return answer{}, fmt.Errorf("it took longer than the limit of %v (stopped after %v)", j.book.deadline, time.Since(begun).Round(time.Millisecond))
	case err != nil:
		return answer{}, err
	case len(said) != 1:
		return answer{}, errors.New("it does not say what it proves")
	}
	return read(said[0])
}

// read takes the two sets out of what OPA gives for them.
func read(said topdown.QueryResult) (answer, error) {
	a := answer{proved: map[string]bool{}, excused: map[string]string{}}
	proved, ok := said[provedVar].Value.(ast.Set)
	if !ok {
		return a, errors.New("proved is not a set")
	}
	for _, member := range proved.Slice() {
		name, ok := member.Value.(ast.String)
		if !ok {
			return a, fmt.Errorf("proved holds %v, which is not the name of a subject", plain(member))
		}
		a.proved[string(name)] = true
	}
	if said[excusedVar] == nil {
		return a, nil
	}
	return a, a.readExcuses(said[excusedVar].Value)
}

func (a answer) readExcuses(said ast.Value) error {
	excused, ok := said.(ast.Set)
	if !ok {
		return errors.New("excused is not a set")
	}
	for _, member := range excused.Slice() {
		entry, _ := member.Value.(ast.Object)
		name, named := wordOf(entry, "subject")
		reason, _ := wordOf(entry, "reason")
		if !named || reason == "" {
			return fmt.Errorf(`excused holds %v; expected {"subject": …, "reason": …}, with some words for the reason`, plain(member))
		}
		if before, twice := a.excused[name]; !twice || reason < before {
			a.excused[name] = reason
		}
	}
	return nil
}

// wordOf gives the text that an object has under a name.
func wordOf(object ast.Object, name string) (string, bool) {
	if object == nil {
		return "", false
	}
	term := object.Get(ast.StringTerm(name))
	if term == nil {
		return "", false
	}
	text, ok := term.Value.(ast.String)
	return string(text), ok
}

// plain gives a value without OPA's notation, for a message.
func plain(term *ast.Term) any {
	value, err := ast.JSON(term.Value)
	if err != nil {
		return term
	}
	return value
}

// stranger gives the first name that is no subject.
func stranger(said answer, known map[string]bool) (string, bool) {
	var strangers []string
	for name := range said.proved {
		if !known[name] {
			strangers = append(strangers, name)
		}
	}
	for name := range said.excused {
		if !known[name] {
			strangers = append(strangers, name)
		}
	}
	if len(strangers) == 0 {
		return "", false
	}
	return slices.Min(strangers), true
}
