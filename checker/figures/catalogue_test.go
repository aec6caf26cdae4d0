package figures_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
	"greysill/schema"
)

func TestListsKeepTheirNamesAndOrder(t *testing.T) {
	var names []string
	for _, l := range figures.Catalogue {
		names = append(names, l.Name)
	}
	require.Equal(t, []string{
		"system", "plan", "demand", "inflows", "fixtures", "fixture_falls", "surges", "storms", "flows", "make_up", "cold_season",
		"months", "frost", "ground", "soil", "parts", "routes", "diverters", "sewer_ways", "open_water",
		"discharges", "holdings", "beds", "layers", "bed_flow", "head_loss", "effluent", "bed_areas", "bed_winter",
		"roots", "settling", "ponds", "routing", "water_levels", "held_levels", "drops", "falls", "spillways", "spillway_channels", "soakage", "soakage_areas", "reaches", "pipes", "pipe_flow", "joins", "gaps", "cover", "pipe_winter", "cleanouts",
		"cuts", "construction", "licensed_work", "crossings", "services", "dug_services", "digs", "upkeep",
		"quantities.gravel", "quantities.liner", "quantities.pipe", "quantities.fittings", "quantities.mulch",
		"quantities.plants", "quantities.excavation", "clearances.well", "clearances.surface_water",
		"clearances.building", "clearances.property_line", "clearances.septic_tank", "clearances.disposal_field",
		"clearances.water_service", "clearances.public_main", "clearances.ground", "clearances.tree",
		"clearances.edible_garden", "clearances.paving", "clearances.drainage", "clearances.floodway",
		"clearances.pool", "clearances.buried_line",
	}, names)
}

func TestEveryFieldIsDeclaredInFull(t *testing.T) {
	for _, l := range figures.Catalogue {
		require.NotEmpty(t, l.Doc, l.Name)
		require.NotEmpty(t, l.Subject, l.Name)
		seen := map[string]bool{}
		for _, f := range l.Fields {
			name := l.Name + " " + f.Name
			require.False(t, seen[f.Name], "%s stands twice", name)
			seen[f.Name] = true
			require.Regexp(t, `^[a-z_]+$`, f.Name)
			require.NotEqual(t, "subject", f.Name, "the rule input names every item's subject so")
			require.Contains(t, []figures.Kind{figures.Number, figures.Text, figures.Truth}, f.Kind, name)
			require.Equal(t, f.Kind == figures.Number, f.Dimension != "", name)
			require.True(t, strings.HasSuffix(f.Doc, "."), "%s needs a sentence", name)
			if f.Source.Title != "" {
				require.NotEmpty(t, f.Source.Standing, name)
				require.NotEmpty(t, f.Formula, "%s has a source for a formula that is not there", name)
			}
		}
	}
}

// kinds gives the words that the design's schema knows for a kind of thing.
func kinds(t *testing.T, thing string) []string {
	text, err := schema.FS.ReadFile("design.schema.json")
	require.NoError(t, err)
	var document struct {
		Defs map[string]struct {
			Properties map[string]struct {
				Enum []string `json:"enum"`
			} `json:"properties"`
		} `json:"$defs"`
	}
	require.NoError(t, json.Unmarshal(text, &document))
	words := document.Defs[thing].Properties["kind"].Enum
	require.NotEmpty(t, words)
	return words
}

func TestEveryKindOfSourceHasAClassOfWater(t *testing.T) {
	classes := map[string][]string{}
	for _, kind := range kinds(t, "source") {
		f := compute(t, entries{"sources": `[{"id": "s", "kind": "` + kind + `"}]`})
		water := known(t, f, "inflows", "s", "water").(string)
		classes[water] = append(classes[water], kind)
	}
	require.Equal(t, map[string][]string{
		"greywater":     {"shower", "bathtub", "washbasin", "clothes washer", "laundry tub"},
		"toilet waste":  {"toilet", "urinal", "bidet"},
		"kitchen waste": {"kitchen sink", "dishwasher"},
		"brine":         {"softener backwash"},
		"clear water":   {"sump pump", "foundation drain", "roof drain", "condensate drain"},
	}, classes)
}

// TestEveryKindOfFeatureIsKeptClearOf: each kind of feature is in one list of
// clearances and no other.
func TestEveryKindOfFeatureIsKeptClearOf(t *testing.T) {
	for _, kind := range kinds(t, "feature") {
		f := compute(t, train.with(entries{"site": `{"grid": {"unit": "m"}, "boundary": [[0, 0], [60, 0], [60, 40], [0, 40]],
			"features": [{"id": "f", "kind": "` + kind + `", "at": [1, 1]}]}`}))
		var in []string
		for _, l := range figures.Catalogue {
			if slices.Contains(subjects(f, l.Name), "bed-1 and f") {
				in = append(in, l.Name)
			}
		}
		require.Len(t, in, 1, kind)
	}
}

func TestTextsKeepToTheirWords(t *testing.T) {
	for _, l := range compute(t, train).Lists {
		for _, item := range l.Items {
			for i, f := range l.List.Fields {
				if f.Words != nil && item.Values[i].Known() {
					require.Contains(t, f.Words, item.Values[i].Text, "%s of %s", f.Name, item.Subject.Name)
				}
			}
		}
	}
}

func TestUnknownListsAndFields(t *testing.T) {
	f := compute(t, train)
	require.Nil(t, f.List("no such list"))
	require.Nil(t, f.List("system")[0].Value("no_such_field"))
}
