package rulebook

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// deadline bounds the judging of one design by one rule.
const deadline = 5 * time.Second

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
	limited, cancel := context.WithTimeout(ctx, j.book.deadline)
	defer cancel()
	set, err := j.query.Eval(limited, rego.EvalParsedInput(input), rego.EvalSortSets(true))
	switch {
	case topdown.IsCancel(err) && ctx.Err() != nil:
		return answer{}, context.Cause(ctx)
	case topdown.IsCancel(err):
		return answer{}, fmt.Errorf("it took longer than the limit of %v (stopped after %v)", j.book.deadline, time.Since(begun).Round(time.Millisecond))
	case err != nil:
		return answer{}, err
	case len(set) != 1:
		return answer{}, errors.New("it does not say what it proves")
	}
	return read(set[0].Bindings)
}

// read takes the two sets out of what OPA gives for them.
func read(bindings rego.Vars) (answer, error) {
	a := answer{proved: map[string]bool{}, excused: map[string]string{}}
	proved, ok := bindings["proved"].([]any)
	if !ok {
		return a, errors.New("proved is not a set")
	}
	for _, member := range proved {
		name, ok := member.(string)
		if !ok {
			return a, fmt.Errorf("proved holds %v, which is not the name of a subject", member)
		}
		a.proved[name] = true
	}
	excused, _ := bindings["excused"].([]any)
	for _, member := range excused {
		entry, _ := member.(map[string]any)
		name, named := entry["subject"].(string)
		reason, _ := entry["reason"].(string)
		if !named || reason == "" {
			return a, fmt.Errorf(`excused holds %v; expected {"subject": …, "reason": …}, with some words for the reason`, member)
		}
		if before, twice := a.excused[name]; !twice || reason < before {
			a.excused[name] = reason
		}
	}
	return a, nil
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
