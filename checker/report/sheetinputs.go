package report

import (
	"slices"
	"strconv"
	"strings"

	"greysill/checker/figures"
)

// Origins say what the figures of a list were worked out from.
type Origins struct {
	Shared  string   // by all subjects
	Several []string // by several of them, to be referred to by number
	Each    []Origin
}

// Origin says what one or several subjects were worked out from besides: by number
// what others have too, and in words.
type Origin struct{ Of, Numbers, From string }

// origins sorts what the figures of a list were worked out from by how many
// subjects share it, so that everything is said once.
func (p *paper) origins(items []*figures.Item) Origins {
	shared := inputsOf(items[0])
	for _, it := range items[1:] {
		shared = slices.DeleteFunc(shared, func(in figures.Input) bool { return !slices.Contains(inputsOf(it), in) })
	}
	o := Origins{Shared: p.inputs(shared, nil)}
	several := repeated(items, shared)
	for i := range several {
		o.Several = append(o.Several, p.inputs(several[i:i+1], nil))
	}
	for _, it := range items {
		own := except(inputsOf(it), shared)
		one := Origin{it.Subject.Name, ranges(indices(several, own)), p.inputs(except(own, several), it.Subject.IDs)}
		i := slices.IndexFunc(o.Each, func(o Origin) bool { return o.Numbers == one.Numbers && o.From == one.From })
		switch {
		case len(own) == 0:
		case i >= 0:
			o.Each[i].Of += ", " + one.Of
		default:
			o.Each = append(o.Each, one)
		}
	}
	return o
}

// repeated gives what several subjects, but not all, were worked out from.
func repeated(items []*figures.Item, shared []figures.Input) []figures.Input {
	var once, several []figures.Input
	for _, it := range items {
		for _, in := range except(inputsOf(it), shared) {
			switch {
			case !slices.Contains(once, in):
				once = append(once, in)
			case !slices.Contains(several, in):
				several = append(several, in)
			}
		}
	}
	return several
}

// indices gives the places, from 1, that some of all things have among them.
func indices(all, some []figures.Input) []int {
	var at []int
	for i, in := range all {
		if slices.Contains(some, in) {
			at = append(at, i+1)
		}
	}
	return at
}

// ranges words rising numbers, those that follow one another as a range.
func ranges(numbers []int) string {
	var words []string
	for i := 0; i < len(numbers); {
		end := i
		for end+1 < len(numbers) && numbers[end+1] == numbers[end]+1 {
			end++
		}
		word := strconv.Itoa(numbers[i])
		if end > i {
			word += "\u2013" + strconv.Itoa(numbers[end])
		}
		words, i = append(words, word), end+1
	}
	return strings.Join(words, ", ")
}

// inputsOf gives everything that a subject's figures were worked out from, once.
func inputsOf(it *figures.Item) []figures.Input {
	var inputs []figures.Input
	for i := range it.Values {
		if it.Values[i].Known() {
			inputs = append(inputs, except(it.Values[i].Inputs, inputs)...)
		}
	}
	return inputs
}

// inputs words what was taken, without the names of subjects that stand before it.
func (p *paper) inputs(inputs []figures.Input, ids []string) string {
	c := &calculation{speaker: p.speaker, document: p.Design.Document}
	named := slices.Clone(inputs)
	for i := range named {
		for _, id := range ids {
			named[i].Name = strings.TrimSuffix(named[i].Name, " of "+id)
		}
	}
	return c.inputs(named)
}
