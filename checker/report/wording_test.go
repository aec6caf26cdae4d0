package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/rulebook"
)

func measured(field *figures.Field, value figures.Value, bound rulebook.Bound, limit float64) *rulebook.Measured {
	m := &rulebook.Measured{Measure: &rulebook.Measure{Field: field, Bound: bound}, Value: &value, Limit: &rulebook.Limit{Value: limit}}
	if m.Margin = value.Number - limit; bound == rulebook.AtMost {
		m.Margin = -m.Margin
	}
	return m
}

// An inch is 25.4 mm and a US gallon 3.785411784 L exactly (NIST Handbook 44,
// Appendix C); 0 °C is 32 °F and a kelvin 1.8 °F (definition of the scales, from
// memory).
func TestMeasuresInWords(t *testing.T) {
	depth := &figures.Field{Name: "least_depth", Kind: figures.Number, Dimension: quantity.Length}
	warmth := &figures.Field{Name: "water_temperature", Kind: figures.Number, Dimension: quantity.Temperature}
	slope := &figures.Field{Name: "slope", Kind: figures.Number, Dimension: quantity.Slope}
	number := func(v float64) figures.Value { return figures.Value{Number: v} }
	for _, c := range []struct {
		m    *rulebook.Measured
		us   string
		si   string
		note string
	}{
		{measured(depth, number(22.9*0.0254), rulebook.AtLeast, 24*0.0254),
			"Least depth: measured 22.9 in; at least 24 in is wanted; 1.1 in short.", "Least depth: measured 582 mm; at least 610 mm is wanted; 28 mm short.", "short"},
		{measured(depth, number(31*0.0254), rulebook.AtMost, 30*0.0254),
			"Least depth: measured 31 in; at most 30 in is allowed; 1 in over.", "Least depth: measured 787 mm; at most 762 mm is allowed; 25 mm over.", "over"},
		{measured(depth, number(0.6), rulebook.AtLeast, 0.6),
			"Least depth: measured 23.6 in; at least 23.6 in is wanted; nothing to spare.", "Least depth: measured 600 mm; at least 600 mm is wanted; nothing to spare.", "just met"},
		{measured(depth, number(0.7), rulebook.AtLeast, 0.6),
			"Least depth: measured 27.6 in; at least 23.6 in is wanted; 3.9 in to spare.", "Least depth: measured 700 mm; at least 600 mm is wanted; 100 mm to spare.", "to spare"},
		{measured(depth, number(0.59999), rulebook.AtLeast, 0.6),
			"Least depth: measured 23.6217 in; at least 23.622 in is wanted; 0.0004 in short.", "Least depth: measured 599.99 mm; at least 600 mm is wanted; 0.01 mm short.", "a hair short"},
		{measured(slope, number(-1.0/48), rulebook.AtLeast, 1.0/48),
			"Slope: measured -0.25 in/ft; at least 0.25 in/ft is wanted; 0.5 in/ft short.", "Slope: measured -2.08 %; at least 2.08 % is wanted; 4.17 % short.", "uphill"},
		{measured(warmth, number(5), rulebook.AtLeast, 10),
			"Water temperature: measured 41 °F; at least 50 °F is wanted; 9 °F short.", "Water temperature: measured 5 °C; at least 10 °C is wanted; 5 °C short.", "degrees"},
	} {
		t.Run(c.note, func(t *testing.T) {
			require.Equal(t, c.us, spaced(speaker{quantity.US}.measure(c.m)))
			require.Equal(t, c.si, spaced(speaker{quantity.SI}.measure(c.m)))
		})
	}
}

// The unit of the limit's text serves for all that is said of the measure.
func TestMeasuresInTheUnitOfTheirLimit(t *testing.T) {
	list := &figures.List{Fields: []*figures.Field{{Name: "greatest_depth", Kind: figures.Number, Dimension: quantity.Length}}}
	it := &figures.Item{List: list, Subject: figures.Subject{Name: "bed-1"}, Values: []figures.Value{{Number: 3.15 * 0.3048}}}
	deep := measured(list.Fields[0], it.Values[0], rulebook.AtMost, 30*0.0254)
	deep.Limit.Text = "30 in"
	f := &rulebook.Finding{Rule: &rulebook.Rule{Remedy: "Take {short} off: {greatest_depth} is more than {limit}."}, Item: it, Measured: []rulebook.Measured{*deep}}
	for _, c := range []struct {
		units           quantity.System
		measure, remedy string
	}{
		{quantity.US, "Greatest depth: measured 37.8 in; at most 30 in is allowed; 7.8 in over.", "Take 7.8 in off: 37.8 in is more than 30 in."},
		{quantity.SI, "Greatest depth: measured 960 mm; at most 762 mm is allowed; 198 mm over.", "Take 199 mm off: 960 mm is more than 762 mm."},
	} {
		require.Equal(t, c.measure, spaced(speaker{c.units}.measure(deep)))
		require.Equal(t, c.remedy, spaced(speaker{c.units}.remedy(f)))
	}
}

func spaced(text string) string { return strings.ReplaceAll(text, nbsp, " ") }

func TestWordsAndYesOrNoInWords(t *testing.T) {
	s := speaker{quantity.US}
	truth := &figures.Field{Name: "has_overflow", Kind: figures.Truth}
	word := &figures.Field{Name: "overflow_route", Kind: figures.Text}
	for _, c := range []struct {
		field *figures.Field
		value figures.Value
		want  string
	}{
		{truth, figures.Value{Truth: true}, "Has overflow: yes."},
		{truth, figures.Value{}, "Has overflow: no."},
		{word, figures.Value{Text: "bed-1, basin-2"}, "Overflow route: bed-1, basin-2."},
		{word, figures.Value{}, "Overflow route: none."},
	} {
		require.Equal(t, c.want, s.measure(&rulebook.Measured{Measure: &rulebook.Measure{Field: c.field}, Value: &c.value}))
	}
}

func TestRemediesAreFilledIn(t *testing.T) {
	list := &figures.List{Fields: []*figures.Field{
		{Name: "part", Kind: figures.Text}, {Name: "distance", Kind: figures.Number, Dimension: quantity.Length}, {Name: "cover", Kind: figures.Number, Dimension: quantity.Length},
	}}
	it := &figures.Item{
		List: list, Subject: figures.Subject{Name: "bed-1 and {limit}", IDs: []string{"bed-1", "well-1"}},
		Values: []figures.Value{{Text: "bed-1"}, {Number: 15.24}, {Lacks: []figures.Lack{{Entry: "cover of bed-1"}}}},
	}
	short := measured(list.Fields[1], it.Values[1], rulebook.AtLeast, 30.48)
	for remedy, want := range map[string]string{
		"Move {part} {short} from {feature}.":   "Move bed-1 50 ft from well-1.",
		"Keep {limit}, not {distance}.":         "Keep 100 ft, not 50 ft.",
		"Ask about {subject}.":                  "Ask about bed-1 and {limit}.",
		"Show {cover} and {something_unknown}.": "Show the cover and the something unknown.",
		"Nothing to fill in.":                   "Nothing to fill in.",
	} {
		f := &rulebook.Finding{Rule: &rulebook.Rule{Remedy: remedy}, Item: it, Measured: []rulebook.Measured{*short}}
		require.Equal(t, want, spaced(speaker{quantity.US}.remedy(f)))
	}
	unmeasured := &rulebook.Finding{Rule: &rulebook.Rule{Remedy: "Add {short} up to {limit}."}, Item: it}
	require.Equal(t, "Add as much as the rule wants up to what the rule wants.", speaker{quantity.US}.remedy(unmeasured))
	require.Equal(t, "Move [part] by [shortfall].", unfilled("Move {part} by {short}."))
}

func TestASpaceBeforeACommaMayEndALine(t *testing.T) {
	require.Equal(t, []string{"one ", ", ", "two"}, words("one , two"))
	require.Equal(t, []string{"aaaa", ", b"}, wrap("aaaa , b", 4, 4))
}
