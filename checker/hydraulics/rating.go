package hydraulics

import "cmp"

// Tabulated reads a rating at even stages from the lowest to the highest, in m, and
// takes it as straight in between, as rating tables are used; under the lowest and
// over the highest it stays as there. There is at least one step. The rating's errors
// come back.
func Tabulated(lowest, highest float64, steps int, rating func(stage float64) (float64, error)) (func(stage float64) float64, error) {
	if err := cmp.Or(positive("number of steps", float64(steps)), positive("range of stages", highest-lowest)); err != nil {
		return nil, err
	}
	flows, step := make([]float64, steps+1), (highest-lowest)/float64(steps)
	for i := range flows {
		flow, err := rating(lowest + float64(i)*step)
		if err != nil {
			return nil, err
		}
		flows[i] = flow
	}
	return func(stage float64) float64 {
		at := min(max((stage-lowest)/step, 0), float64(steps))
		i := min(int(at), steps-1)
		return flows[i] + (at-float64(i))*(flows[i+1]-flows[i])
	}, nil
}
