package earthwork

import "math"

// Where the formulas of sections are worked, for those who cite them.
const (
	AverageEndAreaSource = "G. L. Vose, Handbook of Railroad Construction (1857), § 108"
	PrismoidalSource     = "USDA NRCS Agriculture Handbook 590, Ponds: Planning, Design, Construction (from memory)"
)

// AverageEndArea is the volume between two cross-sections by the mean of their
// areas: L (A₁ + A₂) / 2. It is exact where the area varies linearly, and
// otherwise an estimate that can lie on either side: for a cutting whose depth
// runs out it is too large by up to half. ok is false for a negative length or
// area.
func AverageEndArea(length, first, last float64) (volume float64, ok bool) {
	return result(length*(first+last)/2, length, first, last)
}

// Prismoidal is the volume between two cross-sections by their areas and the
// area half way between them: L (A₁ + 4 Aₘ + A₂) / 6. It is exact for every
// solid whose area varies as a polynomial of up to the third degree: prisms,
// wedges, pyramids, frusta, ponds with plane sides, spheres. The middle area is
// measured there; it is not the mean of the other two. ok is false for a negative
// length or area.
func Prismoidal(length, first, middle, last float64) (volume float64, ok bool) {
	return result(prismoid(length, first, middle, last), length, first, middle, last)
}

// Frustum is the volume of a frustum of a pyramid or a cone between parallel ends:
// L (A₁ + √(A₁A₂) + A₂) / 3. It holds only where one end is an enlargement of the
// other: a basin with sides of one slope all round whose corners all lie at one
// distance from a middle. ok is false for a negative length or area.
func Frustum(length, first, last float64) (volume float64, ok bool) {
	return result(length*(first+math.Sqrt(first*last)+last)/3, length, first, last)
}

// trapezoid is the area of a cross-section with a level bottom, sides of one run and
// level ground.
func trapezoid(width, run, depth float64) float64 { return depth * (width + run*depth) }

func prismoid(length, first, middle, last float64) float64 {
	return length * (first + 4*middle + last) / 6
}
