package rulebook

import (
	"context"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/metrics"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// query asks what a rule says.
type query struct {
	compiler *ast.Compiler
	store    storage.Store // of the limits
	body     ast.Body
}

// The variables of a query.
const (
	provedVar  = ast.Var("proved")
	excusedVar = ast.Var("excused")
)

// newQuery asks one rule, so that a rule that errs takes no other with it. A
// query that asked for more than the two sets could err for what does not decide.
func newQuery(c *ast.Compiler, store storage.Store, r *Rule) query {
	q := query{compiler: c, store: store, body: ast.NewBody(bind(provedVar, r.ID))}
	if r.excuses {
		q.body.Append(bind(excusedVar, r.ID))
	}
	return q
}

// bind gives the expression that sets a variable to the rule's set of that name.
func bind(v ast.Var, id string) *ast.Expr {
	ref := ast.Ref{ast.DefaultRootDocument}
	for name := range strings.SplitSeq(packageOf(id)+"."+string(v), ".") {
		ref = append(ref, ast.StringTerm(name))
	}
	return ast.Equality.Expr(ast.NewTerm(v), ast.NewTerm(ref))
}

// run evaluates the query, at most for the time given and until the context
// ends.
func (q *query) run(ctx context.Context, input ast.Value, limit time.Duration) (topdown.QueryResultSet, error) {
	txn, err := q.store.NewTransaction(ctx)
	if err != nil {
		return nil, err
	}
	defer q.store.Abort(ctx, txn)
	end := topdown.NewCancel()
	defer time.AfterFunc(limit, end.Cancel).Stop()
	defer context.AfterFunc(ctx, end.Cancel)()
	return topdown.NewQuery(q.body).WithCompiler(q.compiler).WithStore(q.store).WithTransaction(txn).
		WithInput(ast.NewTerm(input)).WithCancel(end).WithStrictBuiltinErrors(true).WithMetrics(metrics.NoOp()).Run(ctx)
}

// storeOf holds the limits for rules to read.
func storeOf(limits []*Limit) storage.Store {
	all := map[string]any{}
	for _, l := range limits {
		all[l.Name] = map[string]any{"value": number(l.Value)}
	}
	data := map[string]any{"limits": all}
	return inmem.NewFromObjectWithOpts(data, inmem.OptReturnASTValuesOnRead(true), inmem.OptRoundTripOnWrite(false))
}
