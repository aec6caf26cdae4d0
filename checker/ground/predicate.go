package ground

import (
	"math"
	"math/big"
)

// The predicates are exact for places in whole numbers. Floating point decides
// where its error cannot reach 0; the bounds are those of J. R. Shewchuk,
// Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric
// Predicates (1997), from memory. Integers of any size decide the rest.
const (
	epsilon     = 1.0 / (1 << 53)
	turnError   = (3 + 16*epsilon) * epsilon
	circleError = (10 + 96*epsilon) * epsilon
)

// turn is positive when a, b, c turn counterclockwise, negative when clockwise,
// 0 when they lie in one line.
func turn(a, b, c Spot) int {
	left, right := (a.X-c.X)*(b.Y-c.Y), (a.Y-c.Y)*(b.X-c.X)
	if det := left - right; math.Abs(det) > turnError*(math.Abs(left)+math.Abs(right)) {
		return sign(det)
	}
	return minor(less(a.X, c.X), less(a.Y, c.Y), less(b.X, c.X), less(b.Y, c.Y)).Sign()
}

// inCircle is positive when d lies inside the circle through the
// counterclockwise triangle a, b, c, negative outside, 0 on it.
func inCircle(a, b, c, d Spot) int {
	ax, ay, bx, by, cx, cy := a.X-d.X, a.Y-d.Y, b.X-d.X, b.Y-d.Y, c.X-d.X, c.Y-d.Y
	al, bl, cl := ax*ax+ay*ay, bx*bx+by*by, cx*cx+cy*cy
	det := al*(bx*cy-cx*by) + bl*(cx*ay-ax*cy) + cl*(ax*by-bx*ay)
	size := al*(math.Abs(bx*cy)+math.Abs(cx*by)) + bl*(math.Abs(cx*ay)+math.Abs(ax*cy)) + cl*(math.Abs(ax*by)+math.Abs(bx*ay))
	if math.Abs(det) > circleError*size {
		return sign(det)
	}
	return exactInCircle(a, b, c, d)
}

func exactInCircle(a, b, c, d Spot) int {
	ax, ay := less(a.X, d.X), less(a.Y, d.Y)
	bx, by := less(b.X, d.X), less(b.Y, d.Y)
	cx, cy := less(c.X, d.X), less(c.Y, d.Y)
	det := times(lift(ax, ay), minor(bx, by, cx, cy))
	det.Add(det, times(lift(bx, by), minor(cx, cy, ax, ay)))
	det.Add(det, times(lift(cx, cy), minor(ax, ay, bx, by)))
	return det.Sign()
}

// less is a − b, which whole numbers below 2⁵² leave whole.
func less(a, b float64) *big.Int { return big.NewInt(int64(a) - int64(b)) }

func minor(px, py, qx, qy *big.Int) *big.Int {
	return new(big.Int).Sub(times(px, qy), times(py, qx))
}

func lift(x, y *big.Int) *big.Int { return new(big.Int).Add(times(x, x), times(y, y)) }

func times(a, b *big.Int) *big.Int { return new(big.Int).Mul(a, b) }

func sign(x float64) int {
	if x > 0 {
		return 1
	}
	return -1
}
