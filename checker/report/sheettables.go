package report

import (
	"strings"

	"github.com/rivo/uniseg"
)

func longest(cells []string) int {
	most := 0
	for _, c := range cells {
		most = max(most, uniseg.StringWidth(c))
	}
	return most
}

// sideBySide shares the figures that differ evenly among as few tables as a page has
// room for.
func (v *ListView) sideBySide() {
	names, word := v.nameWidth()
	total, widestOne := 0, 0
	for i, c := range v.Columns {
		if c.Said == "" {
			total, widestOne = total+v.width(i), max(widestOne, v.width(i))
		}
	}
	room := pageColumns - names
	each := min(room, total/(total/room+1)+widestOne)
	left, most := 0, 1
	for i, c := range v.Columns {
		if c.Said != "" {
			continue
		}
		if len(v.Tables) == 0 || v.width(i) > left {
			v.Tables, left = append(v.Tables, FigureTable{Broken: word > widestCell}), each
		}
		left -= v.width(i)
		most = max(most, names+each-left)
		last := &v.Tables[len(v.Tables)-1]
		last.Columns = append(last.Columns, i)
	}
	v.Abreast = max(1, min(mostAbreast, pageColumns/most))
}

// nameWidth is how many letters the column of subjects takes, and the longest word
// in it.
func (v *ListView) nameWidth() (wide, word int) {
	for _, s := range v.Subjects {
		wide = max(wide, uniseg.StringWidth(s.Name+s.Kind+" "+s.Place))
		word = max(word, widest(strings.Fields(s.Name)))
	}
	return min(wide, 2*widestCell) + 2, word
}

// width is how many letters a figure's column takes.
func (v *ListView) width(column int) int {
	wide := widest(strings.Fields(v.Columns[column].Name))
	for _, s := range v.Subjects {
		wide = max(wide, uniseg.StringWidth(s.Cells[column]))
	}
	return wide + 2
}
