package figures

import (
	"time"

	"greysill/checker/design"
)

// month is one month of the common year.
type month struct {
	code, name string
	days       int
}

var year = []month{
	{"jan", "January", 31}, {"feb", "February", 28}, {"mar", "March", 31}, {"apr", "April", 30},
	{"may", "May", 31}, {"jun", "June", 30}, {"jul", "July", 31}, {"aug", "August", 31},
	{"sep", "September", 30}, {"oct", "October", 31}, {"nov", "November", 30}, {"dec", "December", 31},
}

func monthNames(months []int) []string {
	names := make([]string, len(months))
	for i, m := range months {
		names[i] = year[m].name
	}
	return names
}

// monthsText names some months in the order of the year, three or more in a row
// by the first and the last: "January, March to June", "every month".
func monthsText(months []int) string {
	if len(months) == len(year) {
		return "every month"
	}
	var runs []string
	for len(months) > 0 {
		n := 1
		for n < len(months) && months[n] == months[0]+n {
			n++
		}
		if n < 3 {
			runs = append(runs, monthNames(months[:n])...)
		} else {
			runs = append(runs, year[months[0]].name+" to "+year[months[n-1]].name)
		}
		months = months[n:]
	}
	return listed(runs)
}

// calendar is the year in which days are compared: a leap year, so that 29
// February may begin or end a season. It never has to be covered.
const calendar = 2000

// leftOpen gives those of the months that have a day outside a season. Without
// a season that is all of them.
func leftOpen(months []int, s *design.Season) []int {
	if s == nil {
		return months
	}
	from, to := seasonDay(s.From), seasonDay(s.To)
	var open []int
	for _, m := range months {
		for day := range year[m].days {
			if !within(from, to, dayOf(m, day+1)) {
				open = append(open, m)
				break
			}
		}
	}
	return open
}

// within reports whether a day lies in a season, the first and last day
// included.
func within(from, to, day int) bool {
	if from <= to {
		return from <= day && day <= to
	}
	return from <= day || day <= to
}

// dayOf is the day of the calendar year for a month from 0 and its day from 1.
func dayOf(month, day int) int {
	return time.Date(calendar, time.Month(month+1), day, 0, 0, 0, 0, time.UTC).YearDay()
}

// seasonDay is the day of the calendar year for a day written MM-DD.
func seasonDay(written string) int {
	day, err := time.Parse("01-02", written)
	if err != nil {
		return 0
	}
	return dayOf(int(day.Month())-1, day.Day())
}

// seasonText words a season: "1 November to 15 April".
func seasonText(s *design.Season) string {
	if s == nil {
		return none
	}
	return dayText(s.From) + " to " + dayText(s.To)
}

func dayText(written string) string {
	day, err := time.Parse("01-02", written)
	if err != nil {
		return written
	}
	return day.Format("2 January")
}

// season is the bypass season as drawn, nil when none is.
func (d *drawing) season() *design.Season {
	if d.Operation == nil {
		return nil
	}
	return d.Operation.BypassSeason
}
