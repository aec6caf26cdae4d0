package climate

import (
	"fmt"
	"time"

	"greysill/checker/internal/bounds"
)

// FreezingIndexSource says what an air freezing index is.
const FreezingIndexSource = "U.S. Army TM 5-852-6, definition of the freezing index, from memory: the degree-days between the highest and the lowest point of the cumulative curve of a winter"

// FreezingMonths gives the months of a mean year from January to December whose
// mean temperature is at or below a threshold, both in °C, in the order of the
// year.
func FreezingMonths(means [Months]float64, threshold float64) ([]time.Month, error) {
	if err := bounds.Refuse(temperature("threshold", threshold)); err != nil {
		return nil, err
	}
	var months []time.Month
	for i, t := range means {
		m := time.Month(i + 1)
		if err := bounds.Refuse(temperature("mean temperature of "+m.String(), t)); err != nil {
			return nil, err
		}
		if t <= threshold {
			months = append(months, m)
		}
	}
	return months, nil
}

// Season is a freezing season as monthly means show it.
type Season struct {
	Index float64    // of the air, °C·d below 0 °C; 0 where no month's mean is below
	Days  int        // how long it lasts, whole months
	First time.Month // its first and last month; 0 where there is none
	Last  time.Month
}

// FreezingSeason gives the freezing season of a mean year from January to
// December by its monthly mean temperatures in °C: the run of months over which
// the degree-days fall the most. A short thaw within the winter counts against it;
// a year that never thaws is one season. It counts no frost in months whose mean
// is above 0 °C, and a mean year is milder than the hard winter that a design is
// for: an index from the records of the place is better. Source:
// FreezingIndexSource.
func FreezingSeason(means [Months]float64) (Season, error) {
	if err := everyMonth(means); err != nil {
		return Season{}, err
	}
	var hardest Season
	days := lengths()
	for first := range Months {
		if means[first] >= 0 {
			continue
		}
		var s Season
		frost := 0.0
		for n := range Months {
			at := (first + n) % Months
			frost -= means[at] * days[at]
			s.Days += int(days[at])
			if frost > hardest.Index {
				hardest = Season{Index: frost, Days: s.Days, First: time.Month(first + 1), Last: time.Month(at + 1)}
			}
		}
	}
	return hardest, nil
}

// MeanOfYear gives the mean temperature of a year in °C from its monthly means
// from January to December, by the days of each month.
func MeanOfYear(means [Months]float64) (float64, error) {
	if err := everyMonth(means); err != nil {
		return 0, err
	}
	sum, days := 0.0, 0.0
	for i, n := range lengths() {
		sum += means[i] * n
		days += n
	}
	return sum / days, nil
}

func everyMonth(means [Months]float64) error {
	for i, t := range means {
		if err := bounds.Refuse(temperature("mean temperature of "+time.Month(i+1).String(), t)); err != nil {
			return fmt.Errorf("monthly temperatures: %w", err)
		}
	}
	return nil
}
