package design

import (
	"fmt"
	"time"

	"greysill/checker/source"
)

// dates notes days of the year that no calendar has, and months that are given
// twice.
func (f *faults) dates(d *Design) {
	if d.Operation != nil && d.Operation.BypassSeason != nil {
		f.day(d.Operation.BypassSeason.From, "/operation/bypass_season/from")
		f.day(d.Operation.BypassSeason.To, "/operation/bypass_season/to")
	}
	if d.Site.Climate == nil {
		return
	}
	first := map[string]int{}
	for i, m := range d.Site.Climate.Months {
		before, twice := first[m.Month]
		if !twice || m.Month == "" {
			first[m.Month] = i
			continue
		}
		f.at(fmt.Sprintf("/site/climate/months/%d/month", i), func() words {
			at := f.doc.Position(fmt.Sprintf("/site/climate/months/%d/month", before))
			return words{
				found:    fmt.Sprintf("the month %s is given a second time; the first is at line %d, column %d", source.Quote(m.Month), at.Line, at.Column),
				expected: "each month at most once", remedy: "take one of the two out, or correct the month",
			}
		})
	}
}

// day notes a day that is in no year. 29 February is in some.
func (f *faults) day(day, pointer string) {
	if _, err := time.Parse(time.DateOnly, "2000-"+day); err == nil || day == "" || f.wrong[pointer] {
		return
	}
	f.at(pointer, func() words {
		return words{f.what(pointer) + " is " + source.Quote(day), "a day that the calendar has, as MM-DD", ""}
	})
}
