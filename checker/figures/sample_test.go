package figures_test

import (
	"encoding/json"
	"maps"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// entries are members of a design document as JSON text.
type entries map[string]string

// bare is a design with nothing on it but what every design must have.
var bare = entries{
	"format":   `"greywater-design/1"`,
	"title":    `"A test"`,
	"location": `{"region": "US-CO"}`,
	"units":    `"us"`,
	"dwelling": `{"bedrooms": 3, "sewage": "sewer"}`,
	"site":     `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]]}`,
	"sources":  drip,
	"parts":    `[{"id": "gully", "kind": "sewer connection", "at": [1, 39]}]`,
}

// drip is a source that no test is about; a design has at least one.
const drip = `[{"id": "drip", "kind": "condensate drain"}]`

// train is a shower and a washer on a bed, with a toilet on the sewer.
//
//	shower-1 ─┐               ┌─ tank-1 ── bed-1 ── basin-1
//	washer-1 ─┴─ diverter-1 ──┤    └┄┄┄┄┄┄┄┄ └┄┄┄┄┄ overflows to trench-1
//	                          └─ sewer-1 ── toilet-1
var train = entries{
	"sources": `[
		{"id": "shower-1", "kind": "shower", "to": "diverter-1"},
		{"id": "washer-1", "kind": "clothes washer", "to": "diverter-1"},
		{"id": "toilet-1", "kind": "toilet", "to": "sewer-1"}
	]`,
	"parts": `[
		{"id": "diverter-1", "kind": "diverter", "at": [10, 30], "to": "tank-1", "bypass_to": "sewer-1"},
		{"id": "tank-1", "kind": "surge tank", "outline": [[11, 29], [12, 29], [12, 30], [11, 30]], "covered": true, "to": "bed-1", "overflow_to": "trench-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[14, 28], [20, 28], [20, 31], [14, 31]], "to": "basin-1", "overflow_to": "trench-1"},
		{"id": "basin-1", "kind": "mulch basin", "outline": [[24, 28], [26, 28], [26, 30]]},
		{"id": "trench-1", "kind": "infiltration trench", "path": [[14, 20], [20, 20]], "width": "0.5 m"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`,
}

// with gives the entries with some put in the place of others.
func (e entries) with(other entries) entries {
	all := maps.Clone(e)
	maps.Copy(all, other)
	return all
}

// read gives a design by its entries; those that are missing are bare.
func read(t require.TestingT, e entries) *design.Design {
	members := map[string]json.RawMessage{}
	for name, text := range bare.with(e) {
		members[name] = json.RawMessage(text)
	}
	document, err := json.Marshal(members)
	require.NoError(t, err)
	d, problems := design.Read("test.json", document)
	require.Empty(t, problems)
	return d
}

func compute(t require.TestingT, e entries) *figures.Figures { return figures.Compute(read(t, e)) }

// value gives one figure of one subject.
func value(t require.TestingT, f *figures.Figures, list, subject, field string) *figures.Value {
	for _, item := range f.List(list) {
		if item.Subject.Name == subject {
			v := item.Value(field)
			require.NotNil(t, v, "%s has no field %s", list, field)
			return v
		}
	}
	require.Failf(t, "no such subject", "%s has no %s", list, subject)
	return nil
}

// known gives one known figure as a plain value.
func known(t require.TestingT, f *figures.Figures, list, subject, field string) any {
	v := value(t, f, list, subject, field)
	require.Empty(t, v.Lacks, "%s of %s", field, subject)
	for _, l := range figures.Catalogue {
		if l.Name == list {
			for _, declared := range l.Fields {
				if declared.Name == field {
					return plain(declared, v)
				}
			}
		}
	}
	return nil
}

func plain(f *figures.Field, v *figures.Value) any {
	switch f.Kind {
	case figures.Number:
		return v.Number
	case figures.Truth:
		return v.Truth
	default:
		return v.Text
	}
}

// requireKnown compares some figures of one subject; numbers to a millionth of
// a millimetre, cubic metre and so on.
func requireKnown(t require.TestingT, f *figures.Figures, list, subject string, want map[string]any) {
	for field, expected := range want {
		got := known(t, f, list, subject, field)
		if number, isNumber := expected.(float64); isNumber {
			require.InDelta(t, number, got, 1e-9, "%s of %s", field, subject)
			continue
		}
		require.Equal(t, expected, got, "%s of %s", field, subject)
	}
}

// requireLacks compares what a figure lacks, by pointers.
func requireLacks(t require.TestingT, f *figures.Figures, list, subject, field string, pointers ...string) {
	var got []string
	for _, l := range value(t, f, list, subject, field).Lacks {
		require.NotEmpty(t, l.Entry)
		got = append(got, l.Pointer)
	}
	require.Equal(t, pointers, got, "%s of %s", field, subject)
}

func subjects(f *figures.Figures, list string) []string {
	names := []string{}
	for _, item := range f.List(list) {
		names = append(names, item.Subject.Name)
	}
	return names
}

// si gives a quantity's value in the SI unit.
func si(t require.TestingT, text string) float64 {
	q, _, err := quantity.ParseAny(text)
	require.NoError(t, err)
	return q.Value
}

func TestTheSampleIsWhole(t *testing.T) {
	require.Equal(t, []string{"shower-1", "washer-1", "toilet-1"}, subjects(compute(t, train), "inflows"))
}
