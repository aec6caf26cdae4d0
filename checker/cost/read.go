package cost

import (
	"cmp"
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"time"

	"greysill/checker/quantity"
	"greysill/checker/source"
)

// The bounds on a price list.
const (
	maxPrices   = 1000
	maxText     = 200
	maxPrice    = 1e9 // of the currency for one unit
	maxDecimals = 4
)

// Read reads a price list. It gives every problem that it can find, in the order
// of the file; when there is none, it gives the list.
func Read(name string, text []byte) (*Prices, source.Problems) {
	doc, problems := source.Parse(name, text)
	if doc == nil {
		return nil, problems
	}
	r := &reader{doc, problems}
	prices := r.list()
	if len(r.problems) > 0 {
		slices.SortStableFunc(r.problems, func(a, b source.Problem) int { return cmp.Or(a.Line-b.Line, a.Column-b.Column) })
		return nil, r.problems
	}
	return prices, nil
}

// ReadFile reads a price list from a file.
func ReadFile(path string) (*Prices, source.Problems) {
	text, problems := source.ReadBytes(path)
	if problems != nil {
		return nil, problems
	}
	return Read(path, text)
}

// reader reads a price list and collects what is wrong with it.
type reader struct {
	doc      *source.Document
	problems source.Problems
}

func (r *reader) fail(pointer, found, expected, remedy string) {
	r.problems = append(r.problems, r.doc.Problem(pointer, found, expected, remedy))
}

func (r *reader) list() *Prices {
	list := &Prices{Document: r.doc}
	root := r.object("", r.doc.Value(), "$schema", "format", "title", "date", "currency", "prices")
	if root == nil {
		return list
	}
	if format := r.text("", root, "format", true); format != "" && format != Format {
		r.fail("/format", "the format is "+source.Quote(format), source.Quote(Format), "")
	}
	r.text("", root, "$schema", false)
	list.Title, list.Date, list.Currency = r.text("", root, "title", true), r.text("", root, "date", false), r.text("", root, "currency", true)
	if _, err := time.Parse(time.DateOnly, list.Date); list.Date != "" && err != nil {
		r.fail("/date", "the date is "+source.Quote(list.Date), "a day that the calendar has, as YYYY-MM-DD", "")
	}
	if c := list.Currency; c != "" && (len(c) != 3 || strings.ContainsFunc(c, func(r rune) bool { return r < 'A' || r > 'Z' })) {
		r.fail("/currency", "the currency is "+source.Quote(c), `a code of three capital letters as in ISO 4217, such as "USD" or "NZD"`, "")
	}
	r.prices(list, root)
	return list
}

func (r *reader) prices(list *Prices, root map[string]any) {
	prices, isList := root["prices"].([]any)
	switch {
	case root["prices"] == nil:
		r.missing("", "prices")
	case !isList || len(prices) == 0 || len(prices) > maxPrices:
		r.fail("/prices", "this is no list of 1 to 1,000 prices", `a list in [ ] of prices such as {"item": "mulch", "price": 38, "per": "yd3"}`, "")
	}
	first := map[string]*Price{}
	for i, value := range prices[:min(len(prices), maxPrices)] {
		before := len(r.problems)
		p := r.price(fmt.Sprintf("/prices/%d", i), value)
		if len(r.problems) > before {
			continue
		}
		list.Prices = append(list.Prices, p)
		if other := first[p.key()]; other != nil {
			at := r.doc.Position(other.Pointer)
			r.fail(p.Pointer, fmt.Sprintf("the price of %s is given a second time; the first is at line %d, column %d", source.Cut(p.Name()), at.Line, at.Column),
				"each price once", "take one of the two out")
			continue
		}
		first[p.key()] = p
	}
}

// key is the same for two prices of the same thing.
func (p *Price) key() string {
	key := p.Item + fmt.Sprintf("|%.6f", p.Diameter)
	for _, entry := range entries[:len(entries)-1] {
		key += "|" + plain(p.Of[entry])
	}
	return key
}

func (r *reader) price(pointer string, value any) *Price {
	p := &Price{Pointer: pointer, Of: map[string]string{}}
	object := r.object(pointer, value, slices.Concat([]string{"item"}, entries, []string{"price", "per"})...)
	if object == nil {
		return p
	}
	r.amount(p, object)
	p.Per = r.text(pointer, object, "per", true)
	p.Item = r.text(pointer, object, "item", true)
	names := make([]string, len(items))
	for i := range items {
		names[i] = items[i].name
	}
	k := slices.Index(names, p.Item)
	switch {
	case p.Item == "":
		return p
	case k < 0:
		r.fail(pointer+"/item", "there is no item "+source.Quote(p.Item), "one of "+strings.Join(names, ", "), near(p.Item, names))
		return p
	}
	r.of(p, &items[k], object)
	r.unit(p, &items[k])
	return p
}

// of reads what tells prices of the item apart.
func (r *reader) of(p *Price, it *item, object map[string]any) {
	for _, entry := range entries {
		switch _, given := object[entry]; {
		case !given:
		case !slices.Contains(it.entries, entry):
			expected := "no such entry, for one price holds for all"
			if len(it.entries) > 0 {
				expected = strings.Join(it.entries, " or ")
			}
			r.problems = append(r.problems, r.doc.NameProblem(p.Pointer+"/"+entry, "a price of "+it.name+" has no "+entry, expected, ""))
		default:
			p.Of[entry] = r.text(p.Pointer, object, entry, true)
		}
	}
	if p.Of["diameter"] != "" {
		q, err := quantity.Parse(p.Of["diameter"], quantity.Length)
		if err != nil {
			r.fail(p.Pointer+"/diameter", err.Error(), "", "")
		}
		p.Diameter = q.Value
	}
}

// unit reads the unit that the price is for.
func (r *reader) unit(p *Price, it *item) {
	for i := range it.measures {
		m := &it.measures[i]
		if m.dimension == quantity.Number {
			if p.Per == Each {
				p.Unit, p.measure = 1, m
			}
		} else if size, ok := unitSize(p.Per, m.dimension); ok {
			p.Unit, p.measure = size, m
		}
	}
	if p.measure == nil && p.Per != "" {
		r.fail(p.Pointer+"/per", "a price of "+it.name+" is for "+source.Quote(p.Per), "a unit such as "+it.units(), "")
	}
}

// unitSize is the size in SI of a unit of the dimension. Two of a unit are twice
// one; "1/2 yd3" and "ft 6 in" are no units.
func unitSize(unit string, d quantity.Dimension) (float64, bool) {
	one, err := quantity.Parse("1 "+unit, d)
	two, fault := quantity.Parse("2 "+unit, d)
	return one.Value, err == nil && fault == nil && one.Value > 0 && math.Abs(two.Value-2*one.Value) < 1e-9*one.Value
}

// units has examples of the units that prices of the item are for.
func (it *item) units() string {
	examples := map[quantity.Dimension]string{
		quantity.EarthVolume: `"yd3" or "m3"`, quantity.Mass: `"lb" or "t"`, quantity.Area: `"ft2" or "m2"`, quantity.Length: `"ft" or "m"`, quantity.Number: `"each"`}
	var said []string
	for _, m := range it.measures {
		said = append(said, examples[m.dimension])
	}
	return strings.Join(said, ", ")
}

func (r *reader) amount(p *Price, object map[string]any) {
	pointer := p.Pointer + "/price"
	number, isNumber := object["price"].(json.Number)
	_, decimals, _ := strings.Cut(number.String(), ".")
	x, err := number.Float64()
	switch {
	case object["price"] == nil:
		r.missing(p.Pointer, "price")
	case !isNumber:
		r.fail(pointer, "the price is no number", "a number such as 48.50", "the currency stands once, at the top of the list")
	case strings.ContainsAny(number.String(), "eE"):
		r.fail(pointer, "the price "+source.Cut(number.String())+" has an exponent", "a number such as 48.50", "write it out")
	case err != nil || x < 0 || x > maxPrice || len(decimals) > maxDecimals:
		r.fail(pointer, "the price is "+source.Cut(number.String()), "a number from 0 to 1,000,000,000 with at most 4 decimals", "")
	}
	p.Amount, p.Decimals = x, len(decimals)
}

// object requires names and values, with no name that is not known.
func (r *reader) object(pointer string, value any, known ...string) map[string]any {
	object, is := value.(map[string]any)
	if !is {
		r.fail(pointer, "this is no object", "an object in { } with "+strings.Join(known, ", "), "")
		return nil
	}
	for _, name := range slices.Sorted(maps.Keys(object)) {
		if !slices.Contains(known, name) {
			r.problems = append(r.problems, r.doc.NameProblem(pointer+"/"+source.Escape(name), "there is no entry "+source.Quote(name)+" here",
				"one of "+strings.Join(known, ", "), near(name, known)))
		}
	}
	return object
}

// text gives an entry that says something.
func (r *reader) text(pointer string, object map[string]any, name string, required bool) string {
	value, given := object[name]
	text, isText := value.(string)
	text = strings.TrimSpace(text)
	switch {
	case !given && required:
		r.missing(pointer, name)
	case !given:
	case !isText:
		r.fail(pointer+"/"+name, name+" is no text", "text in quotes", "")
	case text == "":
		r.fail(pointer+"/"+name, name+" is empty", "some words", "")
	case len(text) > maxText:
		r.fail(pointer+"/"+name, fmt.Sprintf("%s is %d bytes long", name, len(text)), fmt.Sprintf("at most %d", maxText), "")
	default:
		return text
	}
	return ""
}

func (r *reader) missing(pointer, name string) {
	r.fail(pointer, "the entry "+source.Quote(name)+" is missing", "", "")
}

func near(written string, names []string) string {
	if name := source.Nearest(written, names); name != "" {
		return "did you mean " + source.Quote(name) + "?"
	}
	return ""
}

// plain is a text by which two ways of writing it are the same.
func plain(text string) string { return strings.ToLower(strings.Join(strings.Fields(text), " ")) }
