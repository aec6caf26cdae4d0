package rulebook

import (
	"io/fs"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/rules"
)

func baseBook(t testing.TB) *Book {
	t.Helper()
	return load(t, Layer{Name: BaseName, FS: rules.FS})
}

func TestEveryLimitOfTheBaseBookIsUsed(t *testing.T) {
	for _, l := range baseBook(t).UnusedLimits() {
		t.Errorf("no rule compares with the limit %s", l.Name)
	}
}

func TestNothingMissingEverYieldsAPass(t *testing.T) {
	b := baseBook(t)
	require.NotEmpty(t, b.Rules())
	changes, problems := b.Contract(t.Context(), nil)
	require.Empty(t, problems)
	t.Logf("%d changes to the input and the limits of %d rules; none yields a pass", changes, len(b.rules))
	require.Greater(t, changes, 20*len(b.rules))
}

// Each of these rules breaks its promise in a way that loading does not see.
func TestContractFindsWhatBreaksIt(t *testing.T) {
	for note, c := range map[string]struct{ old, with, said string }{
		"a bound the wrong way":    {"c.works == \"tank\"\n\tc.distance >=", "c.works == \"tank\"\n\tc.distance <=", "lies on the wrong side of the limit from_tank"},
		"nothing is proved":        {"c.works == \"field\"", "c.works == \"field\"\n\tc.works == \"tank\"", ""},
		"a limit of no difference": {"c.distance >= data.limits.from_tank.value", "c.distance + data.limits.from_tank.value >= c.distance", "lies on the wrong side of the limit from_tank"},
	} {
		rule := replacedIn(t, wellRule, c.old, c.with)
		b := load(t, layer(BaseName, map[string]string{"clearances/well.rego": rule, "limits.json": wellLimits, "cautions.json": wellCautions}))
		_, problems := b.Contract(t.Context(), nil)
		require.NotEmpty(t, problems, note)
		require.Contains(t, problems.Error(), c.said, note)
	}
	_, problems := load(t, wellLayer()).Contract(t.Context(), nil)
	require.Empty(t, problems)
	changes, _ := load(t, wellLayer()).Contract(t.Context(), func(*Rule) bool { return false })
	require.Zero(t, changes)
}

// A name misspelt in a rule's text, or a limit that is dropped from limits.json,
// is refused before any design is read.
func TestEveryMisspellingOfTheBaseRulesIsRefused(t *testing.T) {
	for _, r := range baseBook(t).rules {
		e := edits{r}
		e.text(t)
		for _, name := range r.limits {
			require.Contains(t, refused(t, e.edited(t, "limits.json", `"`+name+`": {`, `"`+name+`_dropped": {`)).Error(), `there is no limit "`+name+`"`)
		}
	}
}

// edits are changes to one rule's files.
type edits struct{ rule *Rule }

// text misspells each field and the list in the rule's own text: the book
// is refused.
func (g edits) text(t *testing.T) {
	file := g.rule.ID + ".rego"
	for _, name := range g.rule.reads {
		require.Contains(t, refused(t, g.edited(t, file, "."+name, "."+name+"_renamed")).Error(), `"`+name+`_renamed"`)
	}
	list := "input." + g.rule.Subjects.Name
	require.Contains(t, refused(t, g.edited(t, file, list, list+"_renamed")).Error(), "there is no list")
}

// edited is the rule alone with the limits and cautions of the base, one text
// replaced wherever it stands in one of the files, the METADATA of a rule apart.
func (g edits) edited(t *testing.T, name, old, with string) Layer {
	files := map[string]string{}
	for _, file := range []string{g.rule.ID + ".rego", "limits.json", "cautions.json"} {
		text, err := fs.ReadFile(rules.FS, file)
		require.NoError(t, err)
		files[file] = string(text)
	}
	head, code, found := strings.Cut(files[name], "\npackage ")
	if found {
		head += "\npackage "
	} else {
		head, code = "", files[name]
	}
	require.Contains(t, code, old)
	files[name] = head + strings.ReplaceAll(code, old, with)
	return layer(BaseName, files)
}
