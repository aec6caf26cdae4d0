package climate

import (
	"fmt"
	"math"
	"time"

	"greysill/checker/internal/bounds"
)

// Months is how many months a year has.
const Months = 12

// commonYear is a year without 29 February: monthly means know none.
const commonYear = 2001

// DaysIn gives the days of a month of the common year, 28 to 31. An unknown
// month is an error.
func DaysIn(m time.Month) (int, error) {
	if err := known(m); err != nil {
		return 0, err
	}
	return time.Date(commonYear, m+1, 0, 0, 0, 0, 0, time.UTC).Day(), nil
}

// DayOfYear gives the number of a day in the common year, 1 for 1 January to
// 365. A day that the month does not have is an error.
func DayOfYear(m time.Month, day int) (int, error) {
	days, err := DaysIn(m)
	if err != nil {
		return 0, err
	}
	if day < 1 || day > days {
		return 0, fmt.Errorf("%s has %d days, not a day %d", m, days, day)
	}
	return time.Date(commonYear, m, day, 0, 0, 0, 0, time.UTC).YearDay(), nil
}

// MiddleDay gives the day of the year that stands for a whole month: its 15th.
// Source: FAO 56, Example 17, which takes day 105 for April.
func MiddleDay(m time.Month) (int, error) {
	return DayOfYear(m, 15)
}

// Latitude turns degrees, north positive, into rad. More than 90° either way is
// an error.
func Latitude(degrees float64) (float64, error) {
	if err := bounds.Refuse(bounds.Given("latitude", degrees, -90, 90, "°")); err != nil {
		return 0, err
	}
	return degrees * math.Pi / 180, nil
}

func known(m time.Month) error {
	if m < time.January || m > time.December {
		return fmt.Errorf("there is no month %d: expected 1 to 12", int(m))
	}
	return nil
}

// lengths gives the days of every month.
func lengths() (days [Months]float64) {
	for i := range days {
		n, _ := DaysIn(time.Month(i + 1)) // every month from 1 to 12 is known
		days[i] = float64(n)
	}
	return days
}
