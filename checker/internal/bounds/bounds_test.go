package bounds_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/internal/bounds"
)

func TestErrorsSayWhatWasExpected(t *testing.T) {
	for _, c := range []struct {
		value bounds.Value
		want  string
	}{
		{bounds.Positive("flow", 0, "m³/s"), "the flow is 0 m³/s: expected more than 0"},
		{bounds.NotNegative("area", -2, "m²"), "the area is -2 m²: expected 0 or more"},
		{bounds.NotNegative("area", math.Inf(1), "m²"), "the area is +Inf m²: expected 0 to 1e+15"},
		{bounds.Finite("evaporation", math.NaN(), ""), "the evaporation is NaN: expected a finite number"},
		{bounds.Given("water temperature", 50, 0, 45, "°C"), "the water temperature is 50 °C: expected 0 to 45"},
		{bounds.Share("porosity", 38), "the porosity is 38: expected 0 to 1"},
	} {
		require.EqualError(t, bounds.Refuse(c.value), c.want)
		value, err := bounds.Result(7, bounds.Share("share", 0.5), c.value)
		require.EqualError(t, err, c.want)
		require.Zero(t, value)
	}
	value, err := bounds.Result(7, bounds.Share("share", 1), bounds.Positive("flow", 1, ""))
	require.NoError(t, err)
	require.Equal(t, 7.0, value)
}
