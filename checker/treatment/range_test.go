package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestErrorsSayWhatWasExpected(t *testing.T) {
	for _, c := range []struct {
		value given
		want  string
	}{
		{positive("flow", 0, "m³/s"), "the flow is 0 m³/s: expected more than 0"},
		{notNegative("area", -2, "m²"), "the area is -2 m²: expected 0 or more"},
		{liquid(50), "the water temperature is 50 °C: expected 0 to 45"},
		{porosity(38), "the porosity is 38: expected 0.01 to 1"},
	} {
		require.EqualError(t, refuse(c.value), c.want)
	}
}
