package report

import (
	"slices"
	"strconv"
	"strings"

	"github.com/rivo/uniseg"

	"greysill/checker/cost"
)

const costNotes = "Each thing takes the first price of the list that fits it. Quantities are rounded as shown and then multiplied; two numbers are the least and the greatest. " +
	"Nothing is added for waste, delivery, hauling soil away, tools, permits or taxes, nor for parts and labour that the list does not price."

// costs writes what the quantities come to at the prices of a list.
func (s *calculation) costs(e *cost.Estimate) {
	p := e.Prices
	dated := ""
	if p.Date != "" {
		dated = ", of " + p.Date
	}
	s.heading("Cost")
	s.put(0, ink, "By the price list "+p.Document.Name()+": "+p.Title+dated+", in "+p.Currency+". "+costNotes)
	s.blank()
	if len(e.Lines) > 0 {
		s.costTable(e)
	}
	s.things("The list has no price of these, so they are not in the total", e.Unpriced)
	s.things("The drawing does not show enough of these, so they are not in the total", e.Unknown)
}

// costTable has a row for each price that something takes, under its name and the
// parts that take it.
func (s *calculation) costTable(e *cost.Estimate) {
	decimals := e.Prices.Decimals()
	rows := [][3]string{{"Quantity", "Unit price", "Amount, " + e.Prices.Currency}}
	for _, l := range e.Lines {
		rows = append(rows, [3]string{priced(l), strconv.FormatFloat(l.Price.Amount, 'f', l.Price.Decimals, 64), spanned(l.Amount, decimals)})
	}
	rows = append(rows, [3]string{"", "", spanned(e.Total, decimals)})
	var widths [3]int
	for _, row := range rows {
		for i, cell := range row {
			widths[i] = max(widths[i], uniseg.StringWidth(cell))
		}
	}
	for i, row := range rows {
		switch {
		case i == len(rows)-1:
			s.put(1, bold, "Total of what is priced")
		case i > 0:
			s.hang(1, ink, capital(e.Lines[i-1].Price.Name())+": "+takers(e.Lines[i-1]))
		}
		s.row(row, widths)
	}
}

// row writes the cells in columns where the page is wide enough, else as one
// paragraph.
func (s *calculation) row(cells [3]string, widths [3]int) {
	line := ""
	for i, cell := range cells {
		line += strings.Repeat(" ", 2+widths[i]-uniseg.StringWidth(cell)) + cell
	}
	if s.fits(2, []string{line}) {
		s.verbatim(2, line)
		return
	}
	var said []string
	for _, cell := range cells {
		if cell != "" {
			said = append(said, together(cell))
		}
	}
	s.hang(2, ink, strings.Join(said, "; "))
}

// takers names the parts whose things take a price.
func takers(l *cost.Line) string {
	var ids []string
	for _, t := range l.Things {
		for _, id := range t.Subject.IDs {
			if !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
	}
	return strings.Join(ids, ", ")
}

// priced words the quantity of a line in the unit of its price.
func priced(l *cost.Line) string {
	if l.Price.Per == cost.Each {
		return spanned(l.Quantity, -1)
	}
	return spanned(l.Quantity, -1) + " " + l.Price.Per
}

// things lists what is in no line, with what to add to the drawing.
func (s *calculation) things(title string, things []cost.Thing) {
	if len(things) == 0 {
		return
	}
	s.blank()
	s.put(0, bold, title+":")
	for _, t := range things {
		said := t.Item + ": " + t.Subject.Name
		if len(t.Lacks) > 0 {
			said += ". Add " + entries(t.Lacks) + "."
		}
		s.hang(1, red, capital(said))
	}
}

// spanned words a least and a greatest value, one where they read the same.
func spanned(s cost.Span, decimals int) string {
	least, greatest := strconv.FormatFloat(s.Least, 'f', decimals, 64), strconv.FormatFloat(s.Greatest, 'f', decimals, 64)
	if least == greatest {
		return least
	}
	return least + " to " + greatest
}
