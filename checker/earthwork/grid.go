package earthwork

// GridSource names where the grid method can be looked up.
const GridSource = "P. R. Wolf and C. D. Ghilani, Elementary Surveying, the borrow-pit or unit-area method (from memory)"

// Grid is the volume under a grid of depths by the borrow-pit method:
// (a/4) Σ n h, a being the area of one cell, h the depth of cut at a corner of
// cells and n the number of cells that meet there, 1, 2 or 4. Depths of fill are
// negative, and the volume is cut less fill. It takes the depth over a cell as the
// mean of its corners, which is exact where it varies linearly along each side of
// the cell. rows has the depths of one line of the grid after the other.
//
// ok is false where the rows are fewer than two or of unequal length, a row has
// fewer than two depths, a depth is not finite, or the area is not positive.
func Grid(cell float64, rows [][]float64) (volume float64, ok bool) {
	if len(rows) < 2 || len(rows[0]) < 2 || cell == 0 || !measures(cell) {
		return 0, false
	}
	sum := 0.0
	for i, row := range rows {
		if len(row) != len(rows[0]) || !finite(row...) {
			return 0, false
		}
		for j, depth := range row {
			sum += meeting(i, len(rows)) * meeting(j, len(row)) * depth
		}
	}
	return result(cell/4*sum, cell)
}

// meeting is the number of intervals that meet at one of n places in a line.
func meeting(i, n int) float64 {
	if i == 0 || i == n-1 {
		return 1
	}
	return 2
}
