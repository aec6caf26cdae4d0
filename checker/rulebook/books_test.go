package rulebook

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

func shelf(local ...Layer) *Books {
	base := fstest.MapFS{
		"clearances/well.rego": {Data: []byte(wellRule)}, "limits.json": {Data: []byte(wellLimits)}, "cautions.json": {Data: []byte(wellCautions)},
		"amendments/US-ZZ/amendment.json": {Data: []byte(amendmentOf("Zed", `, "region": "US-ZZ"`))},
		"amendments/US-ZZ/limits.json":    {Data: []byte(`{"format": "greysill-limits/1", "limits": {"from_field": {"value": "200 ft", "source": ` + ordinance + `}}}`)},
		"amendments/US-YY/amendment.json": {Data: []byte("{")},
		"amendments/README.md":            {Data: []byte("words")},
	}
	return NewBooks(Layer{Name: BaseName, FS: base}, local...)
}

func TestBooksByRegion(t *testing.T) {
	b := shelf()
	require.Equal(t, []string{"US-YY", "US-ZZ"}, b.Regions())
	for region, want := range map[string]string{"US-ZZ": "200 ft", "US-XX": "100 ft", "": "100 ft", "../US-ZZ": "100 ft"} {
		book, err := b.In(t.Context(), region)
		require.NoError(t, err)
		l, _ := book.Limit("from_field")
		require.Equal(t, want, l.Text, region)
	}
	first, _ := b.In(t.Context(), "US-ZZ")
	again, _ := b.In(t.Context(), "US-ZZ")
	require.Same(t, first, again)
	other, _ := b.In(t.Context(), "US-XX")
	none, _ := b.In(t.Context(), "")
	require.Same(t, other, none)
	_, err := b.In(t.Context(), "US-YY")
	require.ErrorContains(t, err, "base/amendments/US-YY/amendment.json:1:")
}

func TestLocalAmendmentsComeLast(t *testing.T) {
	local := amending("", map[string]string{"limits.json": `{"format": "greysill-limits/1", "limits": {"from_field": {"value": "75 ft", "source": ` + ordinance + `}}}`})
	book, err := shelf(local).In(t.Context(), "US-ZZ")
	require.NoError(t, err)
	require.Len(t, book.Amendments(), 2)
	l, _ := book.Limit("from_field")
	require.Equal(t, []string{"75 ft", "Zed"}, []string{l.Text, l.Replaced.SetBy})
}
