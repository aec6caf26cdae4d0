package treatment

import (
	"testing"

	"github.com/stretchr/testify/require"
)

var house = Sizing{Flow: 0.40 / 86400, Inlet: 0.150, Effluent: 0.030, Celsius: 10, Depth: 0.45, Porosity: 0.38, Persons: 4, Bedrooms: 3}

// The bases differ by a factor of fifty on one house: from 1.5 m² by a rate from
// the tropics to 83.6 m² by Iowa's area per bedroom.
func TestBasesDisagreeFiftyfold(t *testing.T) {
	least, most := "", ""
	areas := make(map[string]float64)
	for _, b := range Bases() {
		area, err := b.Area(house)
		if err != nil {
			require.Contains(t, b.Name, "Kadlec & Wallace", "only a band of inlet concentrations refuses this house: %v", err)
			continue
		}
		areas[b.Name] = area
		if least == "" || area < areas[least] {
			least = b.Name
		}
		if most == "" || area > areas[most] {
			most = b.Name
		}
	}
	require.Equal(t, "Nurmahomed 2022, greywater in the tropics", least)
	require.Equal(t, "Iowa", most)
	require.Greater(t, areas[most], 50*areas[least])
}

func TestBasesNeedTheirEntries(t *testing.T) {
	for _, b := range Bases() {
		_, err := b.Area(Sizing{})
		require.ErrorContains(t, err, b.Name)
	}
}

// Twice the house, twice the bed, on every basis.
func TestAreaGrowsWithTheHouse(t *testing.T) {
	twice := house
	twice.Flow, twice.Persons, twice.Bedrooms = 2*house.Flow, 2*house.Persons, 2*house.Bedrooms
	for _, b := range Bases() {
		one, err := b.Area(house)
		if err != nil {
			continue // outside its band, as TestBasesDisagreeFiftyfold shows
		}
		two, err := b.Area(twice)
		require.NoError(t, err)
		require.InEpsilon(t, 2*one, two, 1e-9, b.Name)
	}
}
