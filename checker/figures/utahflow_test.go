package figures_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/figures"
)

// TestUtahFlow (Utah Administrative Code R317-401 (2024), Table 1).
func TestUtahFlow(t *testing.T) {
	for bedrooms, want := range map[int]string{1: "160 gal/d", 2: "160 gal/d", 3: "240 gal/d", 4: "280 gal/d", 6: "360 gal/d"} {
		require.InEpsilon(t, si(t, want), figures.UtahFlow(bedrooms), 1e-12, "%d bedrooms", bedrooms)
	}
}

// TestUtahFlowOf (Utah Administrative Code R317-401 (2024), Table 2: 30, 50 and 5 gal/d
// for each bedroom).
func TestUtahFlowOf(t *testing.T) {
	tests := map[string]struct {
		kinds    []string
		bedrooms int
		want     string
	}{
		"laundry":                  {[]string{"clothes washer"}, 3, "90 gal/d"},
		"two of a kind count once": {[]string{"clothes washer", "laundry tub"}, 3, "90 gal/d"},
		"bathing":                  {[]string{"shower", "bathtub", "washbasin"}, 3, "165 gal/d"},
		"a washbasin alone":        {[]string{"washbasin"}, 2, "10 gal/d"},
		"one bedroom as two":       {[]string{"shower"}, 1, "100 gal/d"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			require.InEpsilon(t, si(t, tt.want), figures.UtahFlowOf(tt.bedrooms, tt.kinds), 1e-12)
		})
	}
	require.Zero(t, figures.UtahFlowOf(3, nil))
}

// TestDemandByUtah has three bedrooms, which count as 4 occupants, so 160 gal/d in all
// and 100 gal/d of bathing.
func TestDemandByUtah(t *testing.T) {
	whole := compute(t, washing)
	requireKnown(t, whole, "demand", "the system", map[string]any{"utah_flow": si(t, "240 gal/d"), "utah_flow_share": 160.0 / 240})

	bathing := washing.with(entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "basin-1"}]`})
	requireKnown(t, compute(t, bathing), "demand", "the system", map[string]any{"utah_flow": si(t, "150 gal/d"), "utah_flow_share": 100.0 / 150})

	unused := washing.with(entries{"sources": `[{"id": "shower-1", "kind": "shower", "to": "sewer-1"}]`})
	requireLacks(t, compute(t, unused), "demand", "the system", "utah_flow_share", "/sources")

	open := washing.with(entries{"sources": `[{"id": "washer-1", "kind": "clothes washer"}]`})
	requireLacks(t, compute(t, open), "demand", "the system", "utah_flow", "/sources/0/to")
	requireLacks(t, compute(t, open), "demand", "the system", "utah_flow_share", "/sources/0/to")
}
