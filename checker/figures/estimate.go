package figures

import (
	"math"

	"greysill/checker/hydraulics"
)

// estimate is what is drawn, or what sources that disagree say in its place.
type estimate struct{ least, greatest, source Value }

const fromDrawing = "drawn"

func asDrawn(v Value) estimate { return estimate{v, v, text(fromDrawing, v.Inputs...)} }

// fromTable estimates an entry of a layer by the size of its stones: from every
// row of the tables whose size is next below or next above it, since the sizes of
// the tables lie far apart.
func (l *layer) fromTable(entry string, of func(*hydraulics.Medium) hydraulics.Span) estimate {
	if !l.Size.Given() {
		v := unknown(Lack{l.pointer(entry), entry + " of " + l.name() + ", or its size"})
		return estimate{v, v, v}
	}
	var least, greatest *hydraulics.Medium
	for _, m := range mediaNear(l.Size.Value, of) {
		if least == nil || of(m).Low < of(least).Low {
			least = m
		}
		if greatest == nil || of(m).High > of(greatest).High {
			greatest = m
		}
	}
	if least == nil {
		v := unknown(Lack{l.pointer(entry), entry + " of " + l.name() + ", or a size within the range of 1 mm to 128 mm"})
		return estimate{v, v, v}
	}
	size := l.entry("size")
	return estimate{number(of(least).Low, size), number(of(greatest).High, size), text(saidBy(least, greatest), size)}
}

// mediaNear gives the rows of the size itself, or of the two sizes that it lies
// between; none outside the tables.
func mediaNear(size float64, of func(*hydraulics.Medium) hydraulics.Span) []*hydraulics.Medium {
	const rounding = 1e-9 // of inches turned into metres, as a ratio
	below, above := 0.0, math.Inf(1)
	for i := range hydraulics.Media {
		m := &hydraulics.Media[i]
		if m.Size == 0 || of(m).High == 0 {
			continue
		}
		if m.Size <= size*(1+rounding) {
			below = max(below, m.Size)
		}
		if m.Size >= size*(1-rounding) {
			above = min(above, m.Size)
		}
	}
	var near []*hydraulics.Medium
	for i := range hydraulics.Media {
		m := &hydraulics.Media[i]
		if (m.Size == below || m.Size == above) && of(m).High > 0 && below > 0 && !math.IsInf(above, 1) {
			near = append(near, m)
		}
	}
	return near
}

// saidBy names the rows that an estimate comes from.
func saidBy(least, greatest *hydraulics.Medium) string {
	row := func(m *hydraulics.Medium) string {
		return m.Name + " in " + m.Source.Title + " (" + string(m.Source.Standing) + ")"
	}
	if least == greatest {
		return row(least)
	}
	return "least: " + row(least) + "; greatest: " + row(greatest)
}
