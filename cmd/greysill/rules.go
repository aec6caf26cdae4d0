package main

import (
	"context"
	"fmt"
	"strings"

	"greysill/checker/report"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

const rulesHelp = `greysill rules [flags] [ID] lists the rule book in force. With the ID of a rule, such
as clearances/well, it explains that rule: what it asserts, why, the limits in
force and who set them, the sources, the remedy and the cautions.
`

func listRules(ctx context.Context, c console, args []string) int {
	flags := newFlags("rules", rulesHelp)
	common := addCommon(flags)
	operands, done, err := flags.parse(c, args)
	if done {
		return exitPass
	}
	if err == nil && len(operands) > 1 {
		err = fmt.Errorf("rules explains one rule at a time, not %d", len(operands))
	}
	if err == nil {
		err = common.check()
	}
	if err != nil {
		return badUsage(c, "rules", err)
	}
	books, err := common.books()
	if err != nil {
		return unusable(c, err)
	}
	book, err := books.In(ctx, common.region)
	if err != nil {
		return unusable(c, err)
	}
	options := common.options(c.out)
	if len(operands) == 0 {
		return wrote(c, report.Rules(c.out, book, options))
	}
	rule, ok := book.Rule(operands[0])
	if !ok {
		return badUsage(c, "rules", noSuchRule(book, operands[0]))
	}
	return wrote(c, report.Rule(c.out, book, rule, options))
}

// noSuchRule names the topic's rules where a topic was meant, else the rule whose
// id is nearest.
func noSuchRule(book *rulebook.Book, id string) error {
	var all, topic []string
	for _, r := range book.Rules() {
		all = append(all, r.ID)
		if strings.HasPrefix(r.ID, strings.TrimSuffix(id, "/")+"/") {
			topic = append(topic, r.ID)
		}
	}
	if len(topic) > 0 {
		return fmt.Errorf("%q is a topic, not a rule; its rules are %s", id, strings.Join(topic, ", "))
	}
	if near := source.Nearest(id, all); near != "" {
		return fmt.Errorf("no such rule: %q; did you mean %s?", id, near)
	}
	return fmt.Errorf("no such rule: %q; greysill rules lists them all", id)
}
