package ground

import (
	"math"
	"math/big"
)

// The predicates are exact. Floating point decides where its error cannot
// reach 0; the bounds are those of J. R. Shewchuk, Adaptive Precision
// Floating-Point Arithmetic and Fast Robust Geometric Predicates (1997), from
// memory, with a floor for what underflows. Whole numbers decide the rest.
const (
	epsilon     = 1.0 / (1 << 53)
	turnError   = (3 + 16*epsilon) * epsilon
	circleError = (10 + 96*epsilon) * epsilon
	underflow   = 1e-280
)

// turn is positive when a, b, c turn counterclockwise, negative when clockwise,
// 0 when they lie in one line.
func turn(a, b, c Spot) int {
	left, right := (a.X-c.X)*(b.Y-c.Y), (a.Y-c.Y)*(b.X-c.X)
	if det := left - right; math.Abs(det) > turnError*(math.Abs(left)+math.Abs(right))+underflow {
		return sign(det)
	}
	p := exactly(a.X, a.Y, b.X, b.Y, c.X, c.Y)
	return minor(less(p[0], p[4]), less(p[1], p[5]), less(p[2], p[4]), less(p[3], p[5])).Sign()
}

// inCircle is positive when d lies inside the circle through the
// counterclockwise triangle a, b, c, negative outside, 0 on it.
func inCircle(a, b, c, d Spot) int {
	ax, ay, bx, by, cx, cy := a.X-d.X, a.Y-d.Y, b.X-d.X, b.Y-d.Y, c.X-d.X, c.Y-d.Y
	al, bl, cl := ax*ax+ay*ay, bx*bx+by*by, cx*cx+cy*cy
	det := al*(bx*cy-cx*by) + bl*(cx*ay-ax*cy) + cl*(ax*by-bx*ay)
	size := al*(math.Abs(bx*cy)+math.Abs(cx*by)) + bl*(math.Abs(cx*ay)+math.Abs(ax*cy)) + cl*(math.Abs(ax*by)+math.Abs(bx*ay))
	if math.Abs(det) > circleError*size+underflow {
		return sign(det)
	}
	return exactInCircle(a, b, c, d)
}

func exactInCircle(a, b, c, d Spot) int {
	p := exactly(a.X, a.Y, b.X, b.Y, c.X, c.Y, d.X, d.Y)
	ax, ay := less(p[0], p[6]), less(p[1], p[7])
	bx, by := less(p[2], p[6]), less(p[3], p[7])
	cx, cy := less(p[4], p[6]), less(p[5], p[7])
	det := times(lift(ax, ay), minor(bx, by, cx, cy))
	det.Add(det, times(lift(bx, by), minor(cx, cy, ax, ay)))
	det.Add(det, times(lift(cx, cy), minor(ax, ay, bx, by)))
	return det.Sign()
}

// exactly gives numbers as whole multiples of one power of two, which changes
// no sign of a sum of products.
func exactly(xs ...float64) []*big.Int {
	mantissas, exponents, least := make([]int64, len(xs)), make([]int, len(xs)), math.MaxInt
	for i, x := range xs {
		fraction, exponent := math.Frexp(x)
		mantissas[i], exponents[i] = int64(fraction*(1<<53)), exponent
		if x != 0 {
			least = min(least, exponent)
		}
	}
	whole := make([]*big.Int, len(xs))
	for i, m := range mantissas {
		whole[i] = big.NewInt(m)
		if m != 0 {
			whole[i].Lsh(whole[i], uint(exponents[i]-least))
		}
	}
	return whole
}

func minor(px, py, qx, qy *big.Int) *big.Int { return less(times(px, qy), times(py, qx)) }

func lift(x, y *big.Int) *big.Int { return new(big.Int).Add(times(x, x), times(y, y)) }

func less(a, b *big.Int) *big.Int { return new(big.Int).Sub(a, b) }

func times(a, b *big.Int) *big.Int { return new(big.Int).Mul(a, b) }

func sign(x float64) int {
	if x > 0 {
		return 1
	}
	return -1
}
