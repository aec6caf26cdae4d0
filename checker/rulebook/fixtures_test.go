package rulebook

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/checker/source"
)

// wellRule is a rule of the tests' own: it uses all that a rule may use.
const wellRule = `# METADATA
# title: Greywater works keep their distance from every well.
# description: Soil between the two is what cleans the water.
# custom:
#   subjects: clearances.well
#   level: fail
#   measures:
#     - {field: distance, bound: at least, limit: from_field, where: {works: field}}
#     - {field: distance, bound: at least, limit: from_tank, where: {works: tank}}
#   remedy: Move {part} at least {short} farther from {feature}.
#   caution: germs
#   sources:
#     - {title: A county's code, place: Table 1, standing: from memory}
package greysill.clearances.well

import rego.v2

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "field"
	c.distance >= data.limits.from_field.value
}

proved contains c.subject if {
	some c in input.clearances.well
	c.works == "tank"
	c.distance >= data.limits.from_tank.value
}

excused contains {"subject": c.subject, "reason": $"a {c.works} lets nothing out"} if {
	some c in input.clearances.well
	c.works in {"pipe", "fitting"}
}
`

const wellLimits = `{
  "$schema": "../schema/limits.schema.json",
  "format": "greysill-limits/1",
  "limits": {
    "from_field": {
      "value": "100 ft",
      "dimension": "length",
      "meaning": "Least distance from a well to a field.",
      "source": {"title": "A county's code", "standing": "from memory"}
    },
    "from_tank": {
      "value": "50 ft",
      "dimension": "length",
      "meaning": "Least distance from a well to a tank.",
      "source": {"title": "A county's code", "standing": "from memory"}
    }
  }
}
`

const wellCautions = `{"cautions": {"germs": "Greywater carries germs."}}`

// amendmentOf is an amendment.json with further entries.
func amendmentOf(name, entries string) string {
	return `{"amendment": {"format": "greysill-amendment/1", "name": "` + name + `", "authority": "Harrow County", "edition": "2021", "checked": "2026-05-31"` + entries + `}}`
}

const replacesWell = `, "replaced": [{"rule": "clearances/well", "reason": "R."}]`

// layer gives a layer of the files named. One above the base gets the
// amendment.json that it needs, unless it has one.
func layer(name string, files map[string]string) Layer {
	fsys := fstest.MapFS{}
	if name != BaseName {
		entries := ""
		if files["clearances/well.rego"] != "" {
			entries = replacesWell
		}
		fsys["amendment.json"] = &fstest.MapFile{Data: []byte(amendmentOf(name, entries))}
	}
	for file, text := range files {
		fsys[file] = &fstest.MapFile{Data: []byte(text)}
	}
	return Layer{Name: name, FS: fsys}
}

func wellLayer() Layer {
	return layer(BaseName, map[string]string{"clearances/well.rego": wellRule, "limits.json": wellLimits, "cautions.json": wellCautions})
}

// load loads layers that are in order.
func load(t testing.TB, layers ...Layer) *Book {
	t.Helper()
	b, err := Load(t.Context(), layers...)
	require.NoError(t, err)
	return b
}

// refused gives the problems for which the layers are refused.
func refused(t testing.TB, layers ...Layer) source.Problems {
	t.Helper()
	_, err := Load(t.Context(), layers...)
	var problems source.Problems
	require.ErrorAs(t, err, &problems)
	return problems
}

// replaced is the text with one part of it replaced, which has to be there.
func replacedIn(t testing.TB, text, old, with string) string {
	t.Helper()
	require.Contains(t, text, old)
	return strings.Replace(text, old, with, 1)
}

// ruleText is a rule about the list with a body of its own.
func ruleText(pkg, list, body string) string {
	return "# METADATA\n# title: T.\n# description: D.\n# custom:\n#   subjects: " + list +
		"\n#   level: fail\n#   remedy: R.\n#   sources: [{title: S, standing: common practice}]\npackage greysill." + pkg +
		"\n\nimport rego.v2\n\n" + body
}

// item makes an item of the list; fields left out are unknown.
func item(list, subject string, known map[string]any) *figures.Item {
	l := listOf(list)
	it := &figures.Item{List: l, Subject: figures.Subject{Name: subject, IDs: strings.Split(subject, " and ")}, Values: make([]figures.Value, len(l.Fields))}
	for i, f := range l.Fields {
		v, ok := known[f.Name]
		if !ok {
			it.Values[i].Lacks = []figures.Lack{{Pointer: "/" + f.Name, Entry: f.Name + " of " + subject}}
			continue
		}
		switch v := v.(type) {
		case string:
			it.Values[i].Text = v
		case bool:
			it.Values[i].Truth = v
		case float64:
			it.Values[i].Number = v
		default:
			panic("a figure is text, a truth or a float64")
		}
	}
	return it
}

func listOf(name string) *figures.List {
	for _, l := range figures.Catalogue {
		if l.Name == name {
			return l
		}
	}
	panic("no list " + name)
}

// figuresOf makes figures of the items.
func figuresOf(items ...*figures.Item) *figures.Figures {
	f := &figures.Figures{}
	for _, l := range figures.Catalogue {
		group := figures.Items{List: l}
		for _, it := range items {
			if it.List == l {
				group.Items = append(group.Items, it)
			}
		}
		f.Lists = append(f.Lists, group)
	}
	return f
}

// near is a part so many metres from a well.
func near(subject, works string, metres float64) *figures.Item {
	return item("clearances.well", subject, map[string]any{"works": works, "distance": metres, "part": subject, "feature": "well-1"})
}
