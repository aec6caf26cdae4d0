package earthwork

// lowest gives the parts of a piece on which a side is the lowest, and no floor
// lies. Of two sides in one plane, the first counts.
func (d *dig) lowest(q piece, i int) []piece {
	parts := []piece{q}
	if d.apart {
		return parts
	}
	for _, f := range d.floor {
		parts = d.withoutEach(parts, f.within)
	}
	for j, other := range d.sides {
		if j == i || len(parts) == 0 {
			continue
		}
		lower := d.sides[i].level.minus(other.level)
		parts = d.keepLower(parts, other.within, lower, j < i)
	}
	return parts
}

// withoutEach takes a region away from every part.
func (d *dig) withoutEach(parts []piece, region []linear) []piece {
	var left []piece
	for _, p := range parts {
		d.work++
		left = append(left, p.without(region)...)
	}
	return left
}

// keepLower takes away from every part what another side has below it: where its
// region holds and lower is positive, or 0 if the other comes first.
func (d *dig) keepLower(parts []piece, region []linear, lower linear, first bool) []piece {
	var left []piece
	for _, p := range parts {
		d.work++
		shared := p.within(region)
		if len(shared) == 0 {
			left = append(left, p)
			continue
		}
		left = append(left, p.without(region)...)
		if kept := above(shared, lower, first); len(kept) > 0 {
			left = append(left, kept)
		}
	}
	return left
}

// above gives the part of a piece where lower is not positive; where it is 0
// throughout, only if the piece's own side comes first.
func above(q piece, lower linear, otherFirst bool) piece {
	if otherFirst {
		_, kept := q.split(lower)
		return kept
	}
	kept, _ := q.split(linear{}.minus(lower))
	return kept
}
