package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// What is harmful for long is less than what is harmful for an hour; salmonids
// bear less; alkaline water bears less.
func TestCriteriaAreOrdered(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pH := rapid.Float64Range(6.5, 8.9).Draw(t, "pH")
		celsius := rapid.Float64Range(0, 30).Draw(t, "celsius")
		value := func(v float64, err error) float64 {
			require.NoError(t, err)
			return v
		}
		require.Less(t, value(ChronicAmmonia1999(pH, celsius)), value(AcuteAmmonia1999(pH, true)))
		require.Less(t, value(AcuteAmmonia1999(pH, true)), value(AcuteAmmonia1999(pH, false)))
		require.Less(t, value(ChronicAmmonia2013(pH, celsius)), value(AcuteAmmonia2013(pH, celsius, true)))
		require.LessOrEqual(t, value(AcuteAmmonia2013(pH, celsius, true)), value(AcuteAmmonia2013(pH, celsius, false)))
		require.Less(t, value(AcuteAmmonia1999(pH+0.1, true)), value(AcuteAmmonia1999(pH, true)))
		require.Less(t, value(ChronicAmmonia2013(pH+0.1, celsius)), value(ChronicAmmonia2013(pH, celsius)))
	})
}
