package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRoots(t *testing.T) {
	f := compute(t, wetBed("", `, "plants": [{"species": "Iris tenax", "root_depth": "0.3 m"}, {"species": "Schoenoplectus acutus"}, {"species": "Iris tenax"}]`))
	requireKnown(t, f, "roots", "bed-1 planting 1", map[string]any{
		"bed": "bed-1", "species": "Iris tenax", "least_root_depth": 0.3, "greatest_root_depth": 0.3, "root_depth_source": "drawn",
		"least_media_depth": 10 - 9.4, "least_ratio": 0.3 / (10 - 9.4), "greatest_ratio": 0.3 / (10 - 9.4),
	})
	// Bulrush: 2 ft by Crites, Middlebrooks & Reed 2006, ch. 7; 0.76 m by EPA 625/1-88/022 (remembered).
	requireKnown(t, f, "roots", "bed-1 planting 2", map[string]any{
		"least_root_depth": 2 * 0.3048, "greatest_root_depth": 0.76, "least_ratio": 2 * 0.3048 / (10 - 9.4), "greatest_ratio": 0.76 / (10 - 9.4),
	})
	source := known(t, f, "roots", "bed-1 planting 2", "root_depth_source")
	require.Contains(t, source, "(published)")
	require.Contains(t, source, "(from memory)")
	requireLacks(t, f, "roots", "bed-1 planting 3", "least_ratio", "/parts/0/plants/2/root_depth")
}

func TestRootsWithoutMedia(t *testing.T) {
	plants := `, "plants": [{"species": "Typha latifolia"}]`
	f := compute(t, bedding(`[]`, plants))
	requireLacks(t, f, "roots", "bed-1 planting 1", "least_ratio", "/parts/0/edge_levels", "/parts/0/floor")
	f = compute(t, bedding(`[]`, plants+`, "floor": "10 m", "surface": "10 m"`))
	requireLacks(t, f, "roots", "bed-1 planting 1", "greatest_ratio", "/parts/0/floor")
}

// The deepest-rooted planting counts, of a species by the least that is
// published: bulrush 2 ft by Crites, Middlebrooks & Reed 2006, ch. 7.
func TestRootsOfTheWholeBed(t *testing.T) {
	f := compute(t, wetBed("", `, "plants": [{"species": "Iris tenax", "root_depth": "0.3 m"}, {"species": "Schoenoplectus acutus"}]`))
	requireKnown(t, f, "beds", "bed-1", map[string]any{"root_depth": 2 * 0.3048, "root_reach": 2 * 0.3048 / (10 - 9.4)})
	f = compute(t, wetBed("", `, "plants": [{"species": "Iris tenax"}, {"species": "Schoenoplectus acutus"}]`))
	requireLacks(t, f, "beds", "bed-1", "root_reach", "/parts/0/plants/0/root_depth")
	requireLacks(t, compute(t, wetBed("", "")), "beds", "bed-1", "root_depth", "/parts/0/plants")
	f = compute(t, bedding(`[]`, `, "plants": [{"species": "Typha latifolia"}], "floor": "10 m", "surface": "10 m"`))
	requireLacks(t, f, "beds", "bed-1", "root_reach", "/parts/0/floor")
}

func TestPlantAndCountry(t *testing.T) {
	e := wetBed("", `, "plants": [{"species": "Phragmites australis"}, {"species": "Phalaris arundinacea"}, {"species": "Juncus effusus"}]`)
	e["location"] = `{"region": "NZ-WGN"}`
	f := compute(t, e)
	requireKnown(t, f, "roots", "bed-1 planting 1", map[string]any{"plant": "common reed", "country": "NZ"})
	requireKnown(t, f, "roots", "bed-1 planting 2", map[string]any{"plant": "reed canary grass"})
	requireKnown(t, f, "roots", "bed-1 planting 3", map[string]any{"plant": "another plant"})
}
