package report_test

import (
	"errors"
	"io"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/report"
	"greysill/checker/rulebook"
	"greysill/checker/source"
)

// ofRun is everything that one report is written of.
type ofRun struct {
	designs []report.Judged
	skipped []string
}

func (r ofRun) write(kind string, w io.Writer, o report.Options) error {
	all, err := report.New(kind, w, o)
	if err != nil {
		return err
	}
	for i := range r.designs {
		if err := all.Design(&r.designs[i]); err != nil {
			return err
		}
	}
	return all.Close(r.skipped)
}

// The drawing, rules and figures below are made up for these tests; only what
// the reports look at is drawn.
const drawing = `{
  "format": "greywater-design/1",
  "title": "Greywater garden of the Quillwater house",
  "dwelling": {"bedrooms": 3, "occupants": 4},
  "site": {
    "climate": {},
    "features": [
      {"id": "well-1", "kind": "well", "at": [120, 40]},
      {"id": "well-2", "kind": "well", "at": [30, 200]}
    ]
  },
  "parts": [
    {"id": "diverter-1", "kind": "diverter", "at": [10, 12], "to": "bed-1", "bypass_to": "bed-1"},
    {
      "id": "bed-1",
      "kind": "planted gravel bed",
      "outline": [[40, 40], [64, 40], [64, 46], [40, 46]],
      "edge_levels": ["98.9 ft", "98.8 ft", "98.8 ft", "98.9 ft"],
      "floor": "97.4 ft"
    },
    {"id": "bed-2", "kind": "planted gravel bed", "outline": [[40, 60], [64, 60], [64, 66]]},
    {"id": "tank-1", "kind": "surge tank", "at": [80, 52]}
  ],
  "variances": [
    {"rule": "clearances/well", "part": "tank-1", "reference": "V-2026-017", "expires": "2028-12-31"},
    {"rule": "bed/media_depth", "part": "bed-1", "reference": "V-2019-002", "expires": "2021-12-31"}
  ]
}
`

var (
	published  = figures.Citation{Title: "Harrow County Greywater Ordinance (2021)", Place: "Table 4", Standing: figures.Published}
	practice   = figures.Citation{Title: "setting out from the house", Standing: figures.Practice}
	remembered = figures.Citation{Title: "Handbook of Planted Beds", Place: "ch. 6", Standing: figures.FromMemory}
)

var systemList = &figures.List{
	Name: "system", Doc: "The system as a whole: always one item.", Subject: "the system",
	Fields: []*figures.Field{
		{Name: "occupants", Kind: figures.Number, Dimension: quantity.Number, Doc: "Occupants that the flow is worked out for.",
			Formula: "the greater of the code's count and the occupants stated", Source: published},
		{Name: "daily_flow", Kind: figures.Number, Dimension: quantity.Flow, Doc: "Greywater a day that the fixtures on the system give.",
			Formula: "occupants × 40 gal/d", Source: published},
		{Name: "bypass_covers_freezing_months", Kind: figures.Truth, Doc: "Whether every day of every freezing month lies in the bypass season."},
	},
}

var bedList = &figures.List{
	Name: "beds", Doc: "Every planted gravel bed.", Subject: "a planted gravel bed",
	Fields: []*figures.Field{
		{Name: "least_depth", Kind: figures.Number, Dimension: quantity.Length, Doc: "Least depth of media over the outline.",
			Formula: "lowest surface − floor, over the outline", Source: remembered},
		{Name: "greatest_depth", Kind: figures.Number, Dimension: quantity.Length, Doc: "Greatest depth of media over the outline."},
		{Name: "least_depth_at", Kind: figures.Text, Doc: "Where it is least."},
	},
}

var diverterList = &figures.List{
	Name: "diverters", Doc: "Every diverter.", Subject: "a diverter",
	Fields: []*figures.Field{
		{Name: "second_route_reaches_sewer", Kind: figures.Truth, Doc: "Whether every way of its second route ends in a sewer or septic connection."},
		{Name: "second_route", Kind: figures.Text, Doc: "Where its second route goes, part by part."},
	},
}

var wellList = &figures.List{
	Name: "clearances.well", Doc: "Every part paired with wells and springs.", Subject: "a part and a well",
	Fields: []*figures.Field{
		{Name: "part", Kind: figures.Text, Doc: "The part's id."},
		{Name: "works", Kind: figures.Text, Doc: "What the part does with greywater."},
		{Name: "feature", Kind: figures.Text, Doc: "The feature's id."},
		{Name: "distance", Kind: figures.Number, Dimension: quantity.Length, Doc: "Least distance in plan between the two.",
			Formula: "least distance between the two shapes in plan"},
	},
}

var holdingList = &figures.List{Name: "holdings", Doc: "Every part that holds water.", Subject: "a part that holds water"}

// feet and inches give a length in metres.
func feet(v float64) figures.Value   { return figures.Value{Number: v * 0.3048} }
func inches(v float64) figures.Value { return figures.Value{Number: v * 0.0254} }

func text(v string) figures.Value { return figures.Value{Text: v} }
func truth(v bool) figures.Value  { return figures.Value{Truth: v} }

func lacking(pointer, entry string) figures.Value {
	return figures.Value{Lacks: []figures.Lack{{Pointer: pointer, Entry: entry}}}
}

// from says what a figure was worked out from.
func from(v figures.Value, inputs ...figures.Input) figures.Value {
	v.Inputs = inputs
	return v
}

func item(l *figures.List, subject figures.Subject, values ...figures.Value) *figures.Item {
	return &figures.Item{List: l, Subject: subject, Values: values}
}

func subject(name string, idsAndPointers ...string) figures.Subject {
	s := figures.Subject{Name: name}
	for i := 0; i+1 < len(idsAndPointers); i += 2 {
		s.IDs = append(s.IDs, idsAndPointers[i])
		s.Pointers = append(s.Pointers, idsAndPointers[i+1])
	}
	return s
}

// book is a rule book made by hand.
type book struct {
	rules    []*rulebook.Rule
	limits   []*rulebook.Limit
	cautions map[string]string

	amendments []*rulebook.Amendment
	asides     []*rulebook.SetAside
}

func (b *book) Amendments() []*rulebook.Amendment { return b.amendments }
func (b *book) SetAside() []*rulebook.SetAside    { return b.asides }

func (b *book) Rules() []*rulebook.Rule   { return b.rules }
func (b *book) Limits() []*rulebook.Limit { return b.limits }

func (b *book) Limit(name string) (*rulebook.Limit, bool) {
	for _, l := range b.limits {
		if l.Name == name {
			return l, true
		}
	}
	return nil, false
}

func (b *book) Caution(key string) (string, bool) {
	text, ok := b.cautions[key]
	return text, ok
}

// harrow is a base book with one county's changes.
func harrow() *book {
	limit := func(name, text string, value float64, meaning string, c figures.Citation) *rulebook.Limit {
		return &rulebook.Limit{Name: name, Value: value * 0.3048, Text: text, Meaning: meaning, Source: c, SetBy: "base"}
	}
	field := limit("well_from_field", "100 ft", 100, "Least distance in plan from a well to a part that lets greywater into the ground.", published)
	field.SetBy, field.Replaced = "Harrow County", limit("well_from_field", "75 ft", 75, "The same.", practice)
	field.Note = "The county measures from the edge of the gravel."
	tank := limit("well_from_tank", "50 ft", 50, "Least distance in plan from a well to a watertight tank.", published)
	least := limit("media_depth_least", "18 in", 1.5, "Least depth of gravel anywhere in a bed.", remembered)
	greatest := limit("media_depth_greatest", "30 in", 2.5, "Greatest depth of gravel anywhere in a bed.", remembered)
	distance := wellList.Fields[3]
	rules := []*rulebook.Rule{
		{
			ID: "bed/media_depth", File: "rules/bed/media_depth.rego", Title: "Gravel is deep enough for roots, and no deeper than roots reach, everywhere on the bed.",
			Reason: "Roots bring air into the gravel. Where it is thinner than the roots want, water passes by; where it is deeper, water passes below.",
			Level:  rulebook.LevelFail, NotShown: rulebook.LevelFail, Subjects: bedList, SetBy: "base", Sources: []figures.Citation{remembered},
			Measures: []rulebook.Measure{
				{Field: bedList.Fields[0], Bound: rulebook.AtLeast, Limit: "media_depth_least"},
				{Field: bedList.Fields[1], Bound: rulebook.AtMost, Limit: "media_depth_greatest"},
				{Field: bedList.Fields[2]},
			},
			Remedy: "Lower the floor of {part} by {short}, or raise its edge, until the gravel has {limit} everywhere. It is thinnest at {least_depth_at}.",
		},
		{
			ID: "clearances/well", File: "rules/clearances/well.rego", Title: "Greywater works keep their distance from every well and spring.",
			Reason: "Germs travel with the groundwater. Soil between the works and a well is what cleans the water before somebody drinks it.",
			Level:  rulebook.LevelFail, NotShown: rulebook.LevelWarn, Subjects: wellList, SetBy: "base", Sources: []figures.Citation{published}, Caution: "pathogens",
			Measures: []rulebook.Measure{
				{Field: distance, Bound: rulebook.AtLeast, Limit: "well_from_field", Where: map[string]string{"works": "field"}},
				{Field: distance, Bound: rulebook.AtLeast, Limit: "well_from_tank", Where: map[string]string{"works": "tank"}},
			},
			Remedy: "Move {part} at least {short} farther from {feature}.",
		},
		{
			ID: "diversion/cold_season", File: "rules/diversion/cold_season.rego", Title: "The bypass season covers every month that freezes.",
			Reason: "A bed that freezes takes up no water.", Level: rulebook.LevelFail, NotShown: rulebook.LevelWarn, Subjects: systemList,
			SetBy: "base", Sources: []figures.Citation{practice}, Measures: []rulebook.Measure{{Field: systemList.Fields[2]}}, Remedy: "Lengthen the bypass season.",
		},
		{
			ID: "diversion/second_route", File: "county/diversion/second_route.rego", Title: "The second route of every diverter reaches a sewer or a septic tank.",
			Reason: "When the garden cannot take the water it has to have somewhere else to go.", Level: rulebook.LevelWarn, NotShown: rulebook.LevelWarn,
			Subjects: diverterList, SetBy: "Harrow County", Replaces: "base", Sources: []figures.Citation{practice},
			Measures: []rulebook.Measure{{Field: diverterList.Fields[0]}, {Field: diverterList.Fields[1]}}, Remedy: "Lead the second route of {part} to the sewer.",
		},
		{
			ID: "overflow/path", File: "rules/overflow/path.rego", Title: "Every part that holds water overflows to a safe end.",
			Reason: "Water that has no way out makes its own.", Level: rulebook.LevelFail, NotShown: rulebook.LevelWarn, Subjects: holdingList,
			SetBy: "base", Sources: []figures.Citation{published}, Caution: "drowning", Remedy: "Draw an overflow.",
		},
	}
	cautions := map[string]string{
		"drowning":  "Children drown in very little water. Fence what lies open.",
		"pathogens": "Greywater carries germs. Wear gloves and wash afterwards.",
	}
	return &book{rules, []*rulebook.Limit{greatest, least, field, tank}, cautions, []*rulebook.Amendment{harrowAmendment()}, []*rulebook.SetAside{
		{Rule: "clearances/public_main", Reason: "There is no public main in the county.", Source: practice, SetBy: "Harrow County"},
	}}
}

func harrowAmendment() *rulebook.Amendment {
	return &rulebook.Amendment{
		Name: "Harrow County", Authority: "Harrow County Health Office", Edition: "ordinance of 2021", Checked: "2026-05-31", About: "For sites outside the town.",
		Replaced:   []*rulebook.Replacement{{Rule: "diversion/second_route", Reason: "The county lets a cesspool take the second route."}},
		NotCovered: []*rulebook.Gap{{Topic: "snow loads", Why: "The ordinance does not name them."}},
		Limits:     []string{"well_from_field"},
	}
}

func (b *book) rule(t testing.TB, id string) *rulebook.Rule {
	t.Helper()
	for _, r := range b.rules {
		if r.ID == id {
			return r
		}
	}
	require.FailNow(t, "no such rule: "+id)
	return nil
}

// finding makes a finding with the measures of the rule given by their places.
func (b *book) finding(t testing.TB, id string, status rulebook.Status, it *figures.Item, measures ...int) rulebook.Finding {
	t.Helper()
	r := b.rule(t, id)
	f := rulebook.Finding{Rule: r, Status: status, Item: it}
	for _, i := range measures {
		m := rulebook.Measured{Measure: &r.Measures[i], Value: it.Value(r.Measures[i].Field.Name)}
		if f.Lacks = append(f.Lacks, m.Value.Lacks...); !m.Value.Known() {
			continue
		}
		if limit, ok := b.Limit(r.Measures[i].Limit); ok {
			m.Limit, m.Margin = limit, m.Value.Number-limit.Value
			if r.Measures[i].Bound == rulebook.AtMost {
				m.Margin = -m.Margin
			}
		}
		f.Measured = append(f.Measured, m)
	}
	return f
}

func document(t testing.TB, name, text string) *source.Document {
	t.Helper()
	d, problems := source.Parse(name, []byte(text))
	require.Empty(t, problems)
	return d
}

func quillwater(t testing.TB) *design.Design {
	return &design.Design{
		Format: design.Format, Title: "Greywater garden of the Quillwater house",
		Location: design.Location{Region: "US-MI", Place: "Harrowmere"}, Units: quantity.US,
		Prepared: design.Prepared{Role: "installer", Date: "2026-03-02", Revision: "B"},
		Document: document(t, "designs/quillwater.json", drawing),
	}
}

// faulty is a design with findings of every kind.
func faulty(t testing.TB) report.Judged {
	b := harrow()
	system := item(systemList, subject("the system", "system", ""),
		from(figures.Value{Number: 4}, figures.Input{Name: "bedrooms", Pointer: "/dwelling/bedrooms"}, figures.Input{Name: "occupants", Pointer: "/dwelling/occupants"}),
		from(figures.Value{Number: 160 * 0.003785411784 / 86400}, figures.Input{Name: "occupants", Value: "4"}),
		lacking("/site/climate/freezing_months", "freezing_months of the climate"))
	bed1 := item(bedList, subject("bed-1", "bed-1", "/parts/1"),
		from(inches(16.8), figures.Input{Name: "edge levels", Pointer: "/parts/1/edge_levels"}, figures.Input{Name: "floor", Pointer: "/parts/1/floor"}),
		from(inches(18), figures.Input{Name: "edge levels", Pointer: "/parts/1/edge_levels"}, figures.Input{Name: "floor", Pointer: "/parts/1/floor"}),
		text("its second corner"))
	bed2 := item(bedList, subject("bed-2", "bed-2", "/parts/2"),
		lacking("/parts/2/floor", "floor of bed-2"), lacking("/parts/2/floor", "floor of bed-2"), lacking("/parts/2/floor", "floor of bed-2"))
	pair := func(part, at, works, well, wellAt string, distance figures.Value) *figures.Item {
		return item(wellList, subject(part+" and "+well, part, at, well, wellAt), text(part), text(works), text(well), distance)
	}
	bedWell1 := pair("bed-1", "/parts/1", "field", "well-1", "/site/features/0", feet(56))
	bedWell2 := pair("bed-1", "/parts/1", "field", "well-2", "/site/features/1", feet(154))
	bed2Well1 := pair("bed-2", "/parts/2", "field", "well-1", "/site/features/0", feet(59.46))
	tankWell1 := pair("tank-1", "/parts/3", "tank", "well-1", "/site/features/0", feet(41.76))
	diverterWell1 := pair("diverter-1", "/parts/0", "fitting", "well-1", "/site/features/0", lacking("/parts/0/at", "at of diverter-1"))
	diverter := item(diverterList, subject("diverter-1", "diverter-1", "/parts/0"), truth(false), text("bed-1"))
	d := quillwater(t)
	return report.Judged{
		Name: "designs/quillwater.json", Design: d, Book: b,
		Figures: &figures.Figures{Design: d, Lists: []figures.Items{
			{List: systemList, Items: []*figures.Item{system}}, {List: diverterList, Items: []*figures.Item{diverter}},
			{List: bedList, Items: []*figures.Item{bed1, bed2}}, {List: holdingList},
			{List: wellList, Items: []*figures.Item{bedWell1, bedWell2, bed2Well1, diverterWell1, tankWell1}},
		}},
		Verdict: &rulebook.Verdict{
			Findings: []rulebook.Finding{
				b.finding(t, "bed/media_depth", rulebook.Fail, bed1, 0, 1, 2),
				b.finding(t, "bed/media_depth", rulebook.Fail, bed2, 0, 1),
				b.finding(t, "clearances/well", rulebook.Fail, bedWell1, 0),
				b.finding(t, "clearances/well", rulebook.Pass, bedWell2, 0),
				b.finding(t, "clearances/well", rulebook.Fail, bed2Well1, 0),
				b.finding(t, "clearances/well", rulebook.Fail, tankWell1, 1),
				b.finding(t, "diversion/cold_season", rulebook.Warn, system, 0),
				b.finding(t, "diversion/second_route", rulebook.Warn, diverter, 0, 1),
			},
			Excused:       []rulebook.Excused{{Rule: b.rule(t, "clearances/well"), Item: diverterWell1, Reason: "a watertight fitting lets no greywater out"}},
			NotApplicable: []*rulebook.Rule{b.rule(t, "overflow/path")},
		},
	}
}

// sound is a design of which every finding passes.
func sound(t testing.TB) report.Judged {
	j := faulty(t)
	j.Name = "designs/sound.json"
	j.Verdict = &rulebook.Verdict{Findings: j.Verdict.Findings[3:4], NotApplicable: j.Verdict.NotApplicable}
	return j
}

// unread is a file that could not be read as a design.
func unread() report.Judged {
	at := source.Position{File: "designs/broken.json", Line: 12, Column: 18}
	return report.Judged{Name: at.File, Problems: source.Problems{
		{Position: at, Pointer: "/parts/0/floor", Found: "a number without a unit, 97.4", Expected: `a level as text with its unit, such as "97.4 ft"`,
			Remedy: `write "97.4 ft" or "97.4 m"`, Caret: "      \"floor\": 97.4\n               ^"},
	}}
}

// halfJudged is a design of which one rule could not be judged.
func halfJudged(t testing.TB) report.Judged {
	j := sound(t)
	j.Name = "designs/half.json"
	v := *j.Verdict
	v.Broken = []rulebook.Broken{{Rule: j.Book.Rules()[4], Err: errors.New("rule overflow/path could not be judged: it took longer than the time that a rule is given")}}
	j.Verdict = &v
	return j
}

// allowed is a design with a departure that the county has allowed, and with a
// variance that ran out.
func allowed(t testing.TB) report.Judged {
	j := faulty(t)
	j.Name = "designs/allowed.json"
	j.Design.Variances = []design.Variance{
		{Rule: "clearances/well", Part: "tank-1", Reason: "the well is sealed and out of use", Authority: "Harrow County Health Department", Reference: "V-2026-017", Expires: "2028-12-31"},
		{Rule: "bed/media_depth", Part: "bed-1", Reason: "shallow rock", Authority: "Harrow County Health Department", Reference: "V-2019-002", Expires: "2021-12-31"},
	}
	findings := slices.Clone(j.Verdict.Findings[3:6:6])
	findings[2].Variance = &j.Design.Variances[0]
	j.Verdict = &rulebook.Verdict{
		Findings: []rulebook.Finding{findings[0], findings[2]},
		Variances: []rulebook.VarianceRemark{{
			Variance: &j.Design.Variances[1], Pointer: "/variances/1",
			Found: "the variance expired on 2021-12-31 and does not count", Remedy: "ask the authority to renew it, or put the design right",
		}},
	}
	return j
}
