package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestTheShapeOfASettlingBasin: 6 m × 2 m laid along a 3-4-5 triangle, so that no
// side lies along the grid.
func TestTheShapeOfASettlingBasin(t *testing.T) {
	f := compute(t, settlers(`"volume": "6 m3",`))
	requireKnown(t, f, "settling", "basin-1", map[string]any{"length_to_width": 4.0 / 3})
	slanted := entries{"parts": `[{"id": "basin-1", "kind": "settling basin", "outline": [[10, 10], [14.8, 13.6], [13.6, 15.2], [8.8, 11.6]], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}]`}
	requireKnown(t, compute(t, settlers(``).with(slanted)), "settling", "basin-1", map[string]any{"length_to_width": 3.0})
}

// TestTheRoomForSludge: 12 m² × 0.3 m of 6 m³. Four persons fill it by the fastest
// rate, 0.254 L a day for each (N. F. Gray, Environmental Technology 16 (1995) 795,
// abstract), in 3600 ÷ (4 × 0.254) d.
func TestTheRoomForSludge(t *testing.T) {
	f := compute(t, settlers(`"volume": "6 m3", "sludge_depth": "0.3 m", "clean_out_interval": "2 yr", "accessible": true,`))
	requireKnown(t, f, "settling", "basin-1", map[string]any{"sludge_share": 12 * 0.3 / 6, "clean_out_interval": si(t, "2 yr"), "accessible": true})
	require.InEpsilon(t, si(t, "2 yr")/86400/(3600/(4*0.254)), known(t, f, "settling", "basin-1", "sludge_room_filled"), 1e-9)
}

func TestWhatTheRoomForSludgeLacks(t *testing.T) {
	f := compute(t, settlers(`"volume": "6 m3",`))
	requireLacks(t, f, "settling", "basin-1", "sludge_share", "/parts/0/sludge_depth")
	requireLacks(t, f, "settling", "basin-1", "clean_out_interval", "/parts/0/clean_out_interval")
	requireLacks(t, f, "settling", "basin-1", "sludge_room_filled", "/parts/0/clean_out_interval", "/parts/0/sludge_depth")
	requireLacks(t, f, "settling", "basin-1", "accessible", "/parts/0/accessible")
	requireKnown(t, compute(t, settlers(`"accessible": false,`)), "settling", "basin-1", map[string]any{"accessible": false})
	requireLacks(t, compute(t, settlers(`"sludge_depth": "0 m", "clean_out_interval": "1 yr",`)), "settling", "basin-1", "sludge_room_filled", "/parts/0/sludge_depth")
	requireLacks(t, compute(t, train), "settling", "tank-1", "sludge_share", "/parts/1/sludge_depth", "/parts/1/side_slope", "/parts/1/rim_level", "/parts/1/floor", "/parts/1/water_level")
}
