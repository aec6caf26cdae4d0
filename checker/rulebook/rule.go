// Package rulebook loads the rules in force, the base book and what amends it,
// and judges figures by them. A rule has to prove that it holds: whatever is
// left unproved is a finding.
package rulebook

import (
	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// Level says what an unproved subject of a rule amounts to.
type Level string

// The levels.
const (
	LevelWarn Level = "warn"
	LevelFail Level = "fail"
)

// Rule is one rule as its file declares it. The declaration is the METADATA
// block of the file; see rules/README.md.
type Rule struct {
	ID       string // "clearances/well": its place in the book
	File     string // for messages
	Title    string // the assertion, a sentence
	Reason   string // the metadata's description
	Level    Level
	NotShown Level         // what a subject whose figures lack entries amounts to
	Subjects *figures.List // every item of it is a subject
	Measures []Measure
	Remedy   string // a template: {field}, {limit}, {short}, {subject}, {part}, {feature}
	Caution  string // key into the book's cautions, "" when nobody can be hurt
	Sources  []figures.Citation
	SetBy    string         // name of the layer that the rule comes from
	Replaces string         // name of the layer whose rule it replaced, "" when none
	Changes  []*LevelChange // of Level and NotShown by amendments, in their order

	excuses bool     // whether its module defines excused
	limits  []string // names of the limits that its module compares with
	reads   []string // fields of its subjects that decide: those that its module names
	lists   []string // names of the lists that its module reads
	words   []string // texts that its module compares with
}

// Bound says which way a measure must lie from its limit.
type Bound string

// The bounds.
const (
	AtLeast Bound = "at least"
	AtMost  Bound = "at most"
)

// Measure says which field of a subject a rule measures, and against what, so
// that the measurement, the limit and the margin can be put in words. A measure
// without a limit is shown as it is.
type Measure struct {
	Field *figures.Field
	Bound Bound
	Limit string            // name in limits.json, "" for a word or a yes/no that is only shown
	Where map[string]string // the measure counts only for subjects with these words
}

// Limit is one limit in force, in the SI unit of its dimension.
type Limit struct {
	Name      string
	Dimension quantity.Dimension
	Value     float64
	Text      string // as written
	Meaning   string
	Source    figures.Citation
	Note      string // where sources disagree, the range
	SetBy     string
	Replaced  *Limit // what this one replaced
}
