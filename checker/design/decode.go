package design

import (
	"encoding/json"
	"reflect"
	"strconv"
	"strings"
	"sync"

	"greysill/checker/quantity"
	"greysill/checker/source"
)

// foot is the international foot in metres, exact by definition (NIST Handbook
// 44, Appendix C).
const foot = 0.3048

// decode fills a design from the document. What is not as the schema has it is
// left out: that is noted already, and all else can still be checked. Quantities
// are read here, once, and what they are refused for is noted.
func (f *faults) decode(doc *source.Document) *Design {
	d := &Design{Document: doc}
	grid := decoder{f, 1}
	if value(doc.Value(), "/site/grid/unit") == "ft" {
		grid.metres = foot
	}
	grid.fill(reflect.ValueOf(d).Elem(), doc.Value(), "", "")
	return d
}

// decoder decodes with coordinates in a unit of so many metres.
type decoder struct {
	*faults
	metres float64
}

// fill sets a field from a value. It reports whether it could.
func (d decoder) fill(into reflect.Value, from any, pointer, dimension string) bool {
	switch v := into.Addr().Interface().(type) {
	case *quantity.Quantity:
		q, ok := d.quantity(from, pointer, quantity.Dimension(dimension))
		*v = q
		return ok
	case *Point:
		c, ok := d.coordinates(from, 2)
		*v = Point{c[0], c[1]}
		return ok
	case *Spot:
		c, ok := d.coordinates(from, 3)
		*v = Spot{c[0], c[1], c[2]}
		return ok
	case *Outlet:
		if id, isText := from.(string); isText {
			*v = Outlet{Target: id, Pointer: pointer}
			return true
		}
	}
	return d.fillKind(into, from, pointer, dimension)
}

func (d decoder) fillKind(into reflect.Value, from any, pointer, dimension string) bool {
	switch into.Kind() {
	case reflect.Pointer:
		into.Set(reflect.New(into.Type().Elem()))
		return d.fill(into.Elem(), from, pointer, dimension)
	case reflect.Struct:
		object, ok := from.(map[string]any)
		d.fillStruct(into, object, pointer)
		return ok
	case reflect.Slice:
		return d.fillSlice(into, from, pointer, dimension)
	case reflect.String:
		text, ok := from.(string)
		into.SetString(text)
		return ok
	case reflect.Bool:
		is, ok := from.(bool)
		into.SetBool(is)
		return ok
	case reflect.Int:
		n, ok := number(from)
		into.SetInt(int64(n))
		return ok
	default:
		n, ok := number(from)
		into.SetFloat(n)
		return ok
	}
}

// fillSlice sets a list. What may be one thing or a list of things is a list
// of one. A list of points is left out when one of them is no point, so that
// nothing is said of a shape that is not the one drawn.
func (d decoder) fillSlice(into reflect.Value, from any, pointer, dimension string) bool {
	list, isList := from.([]any)
	if _, isText := from.(string); isText {
		one := reflect.New(into.Type().Elem()).Elem()
		ok := d.fill(one, from, pointer, dimension)
		into.Set(reflect.Append(into, one))
		return ok
	}
	slice, whole := reflect.MakeSlice(into.Type(), len(list), len(list)), isList
	for i, item := range list {
		whole = d.fill(slice.Index(i), item, pointer+"/"+strconv.Itoa(i), dimension) && whole
	}
	if element := into.Type().Elem(); whole || element != reflect.TypeFor[Point]() && element != reflect.TypeFor[Spot]() {
		into.Set(slice)
	}
	return whole
}

func (d decoder) fillStruct(into reflect.Value, object map[string]any, pointer string) {
	for _, f := range entries(into.Type()) {
		if from, is := object[f.name]; is {
			field := into.FieldByIndex(f.index)
			if !d.fill(field, from, pointer+"/"+f.name, f.dimension) && field.Kind() == reflect.Pointer {
				field.SetZero()
			}
		}
	}
	if p := into.FieldByName("Pointer"); p.IsValid() {
		p.SetString(pointer)
	}
}

func (d decoder) coordinates(from any, n int) (c [3]float64, ok bool) {
	list, _ := from.([]any)
	if len(list) != n {
		return c, false
	}
	for i := range n {
		x, isNumber := number(list[i])
		if !isNumber {
			return c, false
		}
		c[i] = x * d.metres
	}
	return c, true
}

func number(v any) (float64, bool) {
	n, _ := v.(json.Number)
	x, err := n.Float64()
	return x, err == nil
}

// entry is a field that the document can give.
type entry struct {
	name, dimension string
	index           []int
}

var entriesOf sync.Map // reflect.Type to []entry

// entries lists the fields of a struct by their tags, those of an embedded
// struct among them.
func entries(t reflect.Type) []entry {
	if known, ok := entriesOf.Load(t); ok {
		return known.([]entry)
	}
	var list []entry
	for _, f := range reflect.VisibleFields(t) {
		if name, _, _ := strings.Cut(f.Tag.Get("json"), ","); name != "" && name != "-" {
			list = append(list, entry{name, f.Tag.Get("dimension"), f.Index})
		}
	}
	entriesOf.Store(t, list)
	return list
}
