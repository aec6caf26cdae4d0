package dispersal

// MulchHeld is the water that the pores of a mulch basin hold before it stands in the
// open: area × depth × porosity. ok is false for a negative value and for a porosity
// above 1. Common practice, no source.
func MulchHeld(area, depth, porosity float64) (volume float64, ok bool) {
	return result(area*depth*porosity, area, depth, porosity, 1-porosity)
}

// MulchWanted is the volume of mulch whose pores hold one full surge, such as what a
// washing machine pumps out at once: surge / porosity. ok is false for a negative
// surge and unless the porosity is above 0 and at most 1. Source: California
// Plumbing Code, section 1502.11, a mulch basin is large enough for the peak flow (from
// memory); the formula is common practice.
func MulchWanted(surge, porosity float64) (volume float64, ok bool) {
	return result(surge/porosity, surge, porosity, 1-porosity)
}
