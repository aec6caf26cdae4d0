package hydraulics_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/hydraulics"
)

// TestFixtureUnitsCarryTheirCode: the codes count a clothes washer as 2 and
// as 3, and one of them has no bathroom group.
func TestFixtureUnitsCarryTheirCode(t *testing.T) {
	ipc, ok := hydraulics.IPCFixtureUnits.Of(hydraulics.ClothesWasher)
	require.True(t, ok)
	upc, ok := hydraulics.UPCFixtureUnits.Of(hydraulics.ClothesWasher)
	require.True(t, ok)
	require.Equal(t, []int{2, 3}, []int{ipc, upc})
	_, ok = hydraulics.UPCFixtureUnits.Of(hydraulics.BathroomGroup)
	require.False(t, ok)
}

// TestUnitFlowsDisagree: the same 5 gal/min is 5 units in Chicago and 10 by the
// International Plumbing Code.
func TestUnitFlowsDisagree(t *testing.T) {
	chicago, err := hydraulics.ChicagoUnitFlow.Units(5 * gpm)
	require.NoError(t, err)
	ipc, err := hydraulics.IPCUnitFlow.Units(5 * gpm)
	require.NoError(t, err)
	require.InDelta(t, 5, chicago, 1e-9)
	require.InDelta(t, 10, ipc, 1e-9)
}

func TestIntermittentUnits(t *testing.T) {
	for flow, want := range map[float64]int{0: 1, 7.5: 1, 7.6: 2, 15: 2, 15.5: 4, 30: 4, 50: 6} {
		units, ok := hydraulics.IntermittentUnits(flow * gpm)
		require.True(t, ok, "%g gpm", flow)
		require.Equal(t, want, units, "%g gpm", flow)
	}
	for _, flow := range []float64{-1, 51} {
		_, ok := hydraulics.IntermittentUnits(flow * gpm)
		require.False(t, ok, "%g gpm", flow)
	}
}

func TestMostUnits(t *testing.T) {
	tests := map[string]struct {
		table  hydraulics.DrainCapacity
		inches float64
		slope  float64 // in/ft
		want   float64 // 0 for no cell
	}{
		"a cell":                      {hydraulics.IPCBuildingDrain, 4, 1.0 / 4, 216},
		"between slopes":              {hydraulics.IPCBuildingDrain, 4, 0.2, 180},
		"steeper than the table":      {hydraulics.IPCBuildingDrain, 4, 2, 250},
		"between sizes":               {hydraulics.IPCBuildingDrain, 3.5, 1.0 / 4, 42},
		"larger than the table":       {hydraulics.IPCBuildingDrain, 10, 1.0 / 4, 1920},
		"smaller than the table":      {hydraulics.IPCBuildingDrain, 1, 1.0 / 4, 0},
		"flatter than the row":        {hydraulics.IPCBuildingDrain, 2, 1.0 / 8, 0},
		"flatter than the table":      {hydraulics.IPCBuildingDrain, 8, 1.0 / 32, 0},
		"a branch, any slope":         {hydraulics.IPCBranch, 2, 1.0 / 8, 6},
		"a branch that rises":         {hydraulics.IPCBranch, 2, -1, 0},
		"the other code's 2 in drain": {hydraulics.UPCHorizontalDrain, 2, 1.0 / 4, 8},
		"the other code's least":      {hydraulics.UPCHorizontalDrain, 2, 1.0 / 8, 0},
		"at its reduced slope":        {hydraulics.UPCReducedSlopeDrain, 3, 1.0 / 8, 28},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			units, _, ok := tt.table.MostUnits(tt.inches*inch, tt.slope/12)
			require.Equal(t, tt.want > 0, ok)
			require.InDelta(t, tt.want, units, 1e-9)
		})
	}
}

// TestMostUnitsHaveTheCellsOwnStanding: rows of one table may be known in
// different ways.
func TestMostUnitsHaveTheCellsOwnStanding(t *testing.T) {
	_, read, _ := hydraulics.UPCHorizontalDrain.MostUnits(4*inch, 1.0/48)
	_, remembered, _ := hydraulics.UPCHorizontalDrain.MostUnits(6*inch, 1.0/48)
	require.Equal(t, hydraulics.Published, read.Standing)
	require.Equal(t, hydraulics.FromMemory, remembered.Standing)
}

func TestLargerAndSteeperDrainsCarryNoLess(t *testing.T) {
	tables := []hydraulics.DrainCapacity{hydraulics.IPCBuildingDrain, hydraulics.IPCBranch, hydraulics.UPCHorizontalDrain}
	rapid.Check(t, func(t *rapid.T) {
		table := rapid.SampledFrom(tables).Draw(t, "table")
		size, slope := rapid.Float64Range(0.02, 0.3), rapid.Float64Range(0, 0.1)
		d, s := size.Draw(t, "size"), slope.Draw(t, "slope")
		less, _, _ := table.MostUnits(d, s)
		more, _, _ := table.MostUnits(d+size.Draw(t, "larger by"), s+slope.Draw(t, "steeper by"))
		require.GreaterOrEqual(t, more, less)
	})
}
