package hydraulics

import (
	"cmp"
	"math"
)

// Sources of the weir formulas.
const (
	RectangularWeirSource = "ideal sharp-crested weir, Q = ⅔·Cd·√(2g)·L·H^1.5 (B. K. Sarkar, Fluid Mechanics & Hydraulic Machines, Example 5.9, as worked in its Python companion)"
	RehbockSource         = "Rehbock, Cd = 0.598 + 0.0897·H/P (Y. A. Çengel and J. M. Cimbala, Fluid Mechanics, Example 13-11, as worked in its Python companion)"
	RehbockHeadSource     = "Rehbock, Q = (3.227 + 0.435·He/P)·L·He^1.5 in ft and cfs, He = H + 0.004 ft (J. Lal, Hydraulics, Example 4.5, as worked in its Python companion)"
	BazinSource           = "Bazin, Cd = 1.5·(0.405 + 0.003 m/H) (Sarkar, Example 5.9, as worked in its Python companion)"
	CipollettiSource      = "Cipolletti, Q = 3.367·L·H^1.5 in ft and cfs (USBR, Water Measurement Manual; from memory)"
)

// Francis's coefficient, m^½/s, as the two systems print it; they are 0.1 %
// apart.
var (
	FrancisUS = usWeir(3.33) // J. Lal, Hydraulics, Example 4.5
	FrancisSI = 1.84         // B. K. Sarkar, Example 5.5
)

// Discharge coefficients of sharp edges, without unit.
const (
	SharpCrest   = 0.62 // sharp-crested weir, 0.60 to 0.62 (Sarkar, Examples 5.1 to 5.9)
	SharpOrifice = 0.60 // sharp-edged orifice, 0.60 to 0.62 (FHWA HEC-22; from memory)
)

// usWeir turns the coefficient of Q = C·L·H^1.5 in feet and cfs into metres.
func usWeir(c float64) float64 { return c * math.Sqrt(foot) }

const foot = 0.3048 // m, exact

// Weir is the flow over any crest by its own coefficient, m³/s: Q = C·L·H^1.5,
// with C in m^½/s and length and head in m. None is negative, C and length are
// more than 0. The head is that of still water above the crest.
func Weir(coefficient, length, head float64) (float64, error) {
	return valid(coefficient*length*math.Pow(head, 1.5),
		positive("weir coefficient", coefficient), positive("weir length", length), notNegative("head", head))
}

// RectangularWeir is the flow over a sharp-crested rectangular weir, m³/s:
// Q = ⅔·Cd·√(2g)·L·H^1.5. Ranges as for Weir.
func RectangularWeir(cd, length, head float64) (float64, error) {
	return Weir(2.0/3*cd*math.Sqrt(2*Gravity), length, head)
}

// FrancisWeir is the flow over a sharp-crested rectangular weir whose sheet is
// drawn in at 0, 1 or 2 ends, m³/s: Q = C·(L − 0.1·n·H)·H^1.5, with C FrancisUS
// or FrancisSI. It holds for a head to about a third of the length (USBR, Water
// Measurement Manual; from memory); a longer one is a *RangeError.
func FrancisWeir(coefficient, length, head float64, contractions int) (float64, error) {
	err := cmp.Or(within("number of end contractions", float64(contractions), 0, 2),
		positive("weir length", length), within("head over a third of the length", 3*head/length, 0, 1))
	if err != nil {
		return 0, err
	}
	return Weir(coefficient, length-0.1*float64(contractions)*head, head)
}

// RehbockCd is the discharge coefficient of a rectangular weir over the full
// width of its channel: Cd = 0.598 + 0.0897·H/P, with the crest P above the
// bed, in m. The head may be 0; the crest is above the bed. It is given for H
// up to twice P (from memory); a greater head is a *RangeError.
func RehbockCd(head, crest float64) (float64, error) {
	return valid(0.598+0.0897*head/crest, positive("height of the crest", crest), withinTwice(head, crest))
}

// RehbockWeir is the flow over the same weir in Rehbock's later form, m³/s,
// with the head lengthened by 0.004 ft. Ranges as for RehbockCd.
func RehbockWeir(length, head, crest float64) (float64, error) {
	if err := cmp.Or(positive("height of the crest", crest), withinTwice(head, crest)); err != nil {
		return 0, err
	}
	effective := head + 0.004*foot
	return Weir(usWeir(3.227+0.435*effective/crest), length, effective)
}

func withinTwice(head, crest float64) error {
	return within("head over twice the crest's height", head/crest/2, 0, 1)
}

// BazinCd is the discharge coefficient of a suppressed rectangular weir by
// Bazin: Cd = 1.5·(0.405 + 0.003 m/H). The head in m is more than 0.
func BazinCd(head float64) (float64, error) {
	return valid(1.5*(0.405+0.003/head), positive("head", head))
}

// CipollettiWeir is the flow over a trapezoidal sharp-crested weir with sides
// of 1 across to 4 up, whose widening makes up for the contractions, m³/s.
// Ranges as for Weir.
func CipollettiWeir(length, head float64) (float64, error) {
	return Weir(usWeir(3.367), length, head)
}
