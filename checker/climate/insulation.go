package climate

// InsulationSource says how much soil insulation stands for against frost.
const InsulationSource = "Alaska Administrative Code 18 AAC 72.630, (c), 1 in of insulation in place of 1 ft of soil"

// soilForInsulation is the soil that keeps frost out as insulation of unit
// thickness does: 12 in for 1 in.
const soilForInsulation = 12

// SoilForInsulation gives how thick a cover of soil keeps the frost out as well
// as an insulation of so many m, 0 to 1, in m. Source: InsulationSource.
func SoilForInsulation(thickness float64) (float64, error) {
	if err := refuse(given{"insulation", thickness, 0, 1, "m"}); err != nil {
		return 0, err
	}
	return soilForInsulation * thickness, nil
}
