package quantity_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/quantity"
)

func TestComparable(t *testing.T) {
	for _, pair := range [][2]quantity.Dimension{
		{quantity.Length, quantity.Level}, {quantity.GrainSize, quantity.Level}, {quantity.EarthVolume, quantity.Volume},
		{quantity.Flow, quantity.PeakFlow}, {quantity.Share, quantity.Share},
	} {
		require.True(t, quantity.Comparable(pair[0], pair[1]), pair)
		require.True(t, quantity.Comparable(pair[1], pair[0]), pair)
	}
	// Lengths per time that mean different things.
	require.False(t, quantity.Comparable(quantity.Velocity, quantity.Loading))
	require.False(t, quantity.Comparable(quantity.Area, quantity.Volume))
}
