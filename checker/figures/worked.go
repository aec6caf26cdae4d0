package figures

import "slices"

// worked works a figure out by a formula from other figures. What they lack, it
// lacks. Where they are all known and the formula refuses them, it lacks what
// the fault names, within the range that the formula takes.
func worked(fault Lack, formula func() (float64, error), from ...Value) Value {
	inputs, lacks := gathered(from)
	if len(lacks) > 0 {
		return unknown(lacks...)
	}
	x, err := formula()
	if err != nil {
		return unknown(Lack{fault.Pointer, fault.Entry + " within the range of the formula: " + err.Error()})
	}
	return number(x, inputs...)
}

// gathered puts together what figures were worked out from and what they lack,
// each once.
func gathered(from []Value) (inputs []Input, lacks []Lack) {
	n := 0
	for i := range from {
		n += len(from[i].Inputs)
	}
	inputs = make([]Input, 0, n)
	for i := range from {
		for _, in := range from[i].Inputs {
			if !slices.Contains(inputs, in) {
				inputs = append(inputs, in)
			}
		}
		for _, l := range from[i].Lacks {
			if !slices.Contains(lacks, l) {
				lacks = append(lacks, l)
			}
		}
	}
	return inputs, lacks
}
