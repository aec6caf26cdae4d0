package geometry

import "math"

// Turn is the angle between the directions a→b and c→d, from 0 to 180 degrees; 0
// where one of them has no length.
func Turn(a, b, c, d Point) float64 {
	ux, uy, vx, vy := b.X-a.X, b.Y-a.Y, d.X-c.X, d.Y-c.Y
	return math.Atan2(math.Abs(ux*vy-uy*vx), ux*vx+uy*vy) * 180 / math.Pi
}

// Acute is the angle between the lines a–b and c–d, from 0 to 90 degrees.
func Acute(a, b, c, d Point) float64 {
	turn := Turn(a, b, c, d)
	return min(turn, 180-turn)
}
