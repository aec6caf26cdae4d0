package cost_test

import (
	"bytes"
	"encoding/json"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"greysill/checker/cost"
	"greysill/schema"
)

// list is a price list with the prices given.
func list(prices string) string {
	return `{"format": "greysill-prices/1", "title": "A test", "currency": "NZD", "prices": [` + prices + `]}`
}

func TestRead(t *testing.T) {
	p, problems := cost.Read("prices.json", []byte(list(`{"item": "pipe", "material": "ABS", "diameter": "2 in", "price": 2.10, "per": "ft"}, {"item": "plant", "price": 6, "per": "each"}`)))
	require.Empty(t, problems)
	require.Equal(t, "NZD", p.Currency)
	require.Equal(t, "pipe, ABS, 2 in", p.Prices[0].Name())
	require.InDelta(t, 0.0508, p.Prices[0].Diameter, 1e-12)
	require.InDelta(t, 0.3048, p.Prices[0].Unit, 1e-12)
	require.Equal(t, 2.1, p.Prices[0].Amount)
	require.Equal(t, 2, p.Decimals())
}

func TestReadRefuses(t *testing.T) {
	tests := map[string]struct{ text, want string }{
		"another format": {`{"format": "greywater-design/1", "title": "A", "currency": "USD", "prices": [{"item": "mulch", "price": 1, "per": "yd3"}]}`,
			`prices.json:1:12: the format is "greywater-design/1"; expected "greysill-prices/1"`},
		"nothing there": {`{}`, "prices.json:1:1: the entry \"format\" is missing\nprices.json:1:1: the entry \"title\" is missing\n" +
			"prices.json:1:1: the entry \"currency\" is missing\nprices.json:1:1: the entry \"prices\" is missing"},
		"no object":   {`[]`, `prices.json:1:1: this is no object; expected an object in { } with $schema, format, title, date, currency, prices`},
		"no currency": {`{"format": "greysill-prices/1", "title": "A", "currency": "$", "prices": [{"item": "mulch", "price": 1, "per": "yd3"}]}`, `prices.json:1:59: the currency is "$"; expected a code of three capital letters as in ISO 4217, such as "USD" or "NZD"`},
		"no day":      {`{"format": "greysill-prices/1", "title": "A", "date": "2025-02-30", "currency": "USD", "prices": [{"item": "mulch", "price": 1, "per": "yd3"}]}`, `prices.json:1:55: the date is "2025-02-30"; expected a day that the calendar has, as YYYY-MM-DD`},
		"no prices":   {list(``), `prices.json:1:81: this is no list of 1 to 1,000 prices; expected a list in [ ] of prices such as {"item": "mulch", "price": 38, "per": "yd3"}`},
		"no item":     {list(`{"item": "mulhc", "price": 38, "per": "yd3"}`), `prices.json:1:91: there is no item "mulhc"; expected one of gravel, liner, pipe, fitting, mulch, plant, excavation; did you mean "mulch"?`},
		"no unit":     {list(`{"item": "mulch", "price": 38}`), `prices.json:1:82: the entry "per" is missing`},
		"a unit of another dimension": {list(`{"item": "gravel", "price": 38, "per": "ft2"}`),
			`prices.json:1:121: a price of gravel is for "ft2"; expected a unit such as "yd3" or "m3", "lb" or "t"`},
		"a unit of what is counted": {list(`{"item": "plant", "price": 6, "per": "ft"}`), `prices.json:1:119: a price of plant is for "ft"; expected a unit such as "each"`},
		"more than one unit":        {list(`{"item": "pipe", "price": 6, "per": "10 ft"}`), `prices.json:1:118: a price of pipe is for "10 ft"; expected a unit such as "ft" or "m"`},
		"a part of a unit":          {list(`{"item": "mulch", "price": 6, "per": "1/2 yd3"}`), `prices.json:1:119: a price of mulch is for "1/2 yd3"; expected a unit such as "yd3" or "m3"`},
		"feet and inches":           {list(`{"item": "pipe", "price": 6, "per": "ft 6 in"}`), `prices.json:1:118: a price of pipe is for "ft 6 in"; expected a unit such as "ft" or "m"`},
		"an entry of another item":  {list(`{"item": "mulch", "material": "bark", "price": 38, "per": "yd3"}`), `prices.json:1:100: a price of mulch has no material; expected no such entry, for one price holds for all`},
		"a species of pipe":         {list(`{"item": "pipe", "species": "reed", "price": 38, "per": "ft"}`), `prices.json:1:99: a price of pipe has no species; expected material or diameter`},
		"a misspelt entry":          {list(`{"item": "mulch", "prise": 38, "price": 38, "per": "yd3"}`), `prices.json:1:100: there is no entry "prise" here; expected one of item, material, kind, species, diameter, price, per; did you mean "price"?`},
		"a price in words":          {list(`{"item": "mulch", "price": "38 USD", "per": "yd3"}`), `prices.json:1:109: the price is no number; expected a number such as 48.50; the currency stands once, at the top of the list`},
		"less than nothing":         {list(`{"item": "mulch", "price": -1, "per": "yd3"}`), `prices.json:1:109: the price is -1; expected a number from 0 to 1,000,000,000 with at most 4 decimals`},
		"an exponent":               {list(`{"item": "mulch", "price": 3e1, "per": "yd3"}`), `prices.json:1:109: the price 3e1 has an exponent; expected a number such as 48.50; write it out`},
		"a diameter without a unit": {list(`{"item": "pipe", "diameter": "2", "price": 38, "per": "ft"}`), `prices.json:1:111: "2" has no unit; expected a length such as "24 in", "2 ft 6 in" or "0.6 m"; write the unit after the number`},
		"a price twice": {list(`{"item": "pipe", "diameter": "2 in", "price": 1, "per": "ft"}, {"item": "pipe", "diameter": "50.8 mm", "price": 2, "per": "ft"}`),
			`prices.json:1:145: the price of pipe, 50.8 mm is given a second time; the first is at line 1, column 82; expected each price once; take one of the two out`},
		"a name twice": {list(`{"item": "mulch", "price": 1, "price": 2, "per": "yd3"}`), `prices.json:1:112: the name "price" is given a second time`},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			p, problems := cost.Read("prices.json", []byte(tt.text))
			require.Nil(t, p)
			require.NotEmpty(t, problems)
			require.Contains(t, problems.Error(), tt.want)
			for _, p := range problems {
				require.NotEmpty(t, p.Caret)
			}
		})
	}
}

// TestTheSchemaTakesWhatIsRead holds the published schema and the reader against
// each other.
func TestTheSchemaTakesWhatIsRead(t *testing.T) {
	text, err := schema.FS.ReadFile("prices.schema.json")
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("prices.schema.json", bytes.NewReader(text)))
	s, err := c.Compile("prices.schema.json")
	require.NoError(t, err)
	for prices, read := range map[string]bool{
		`{"item": "gravel", "material": "pea gravel", "price": 48.5, "per": "t"}`:                     true,
		`{"item": "fitting", "kind": "cleanout", "diameter": "2 in", "price": 0, "per": "each"}`:      true,
		`{"item": "plant", "species": "Carex", "price": 4, "per": "each"}`:                            true,
		`{"item": "excavation", "price": 28, "per": "cy"}`:                                            true,
		`{"item": "excavation", "material": "sand", "price": 28, "per": "yd3"}`:                       false,
		`{"item": "pipe", "kind": "bend", "price": 28, "per": "ft"}`:                                  false,
		`{"item": "gravel", "species": "reed", "price": 28, "per": "t"}`:                              false,
		`{"item": "liner", "diameter": "2 in", "price": 28, "per": "ft2"}`:                            false,
		`{"item": "soil", "price": 28, "per": "yd3"}`:                                                 false,
		`{"item": "mulch", "price": -28, "per": "yd3"}`:                                               false,
		`{"item": "mulch", "price": "28", "per": "yd3"}`:                                              false,
		`{"item": "mulch", "price": 28}`:                                                              false,
		``:                                                                                            false,
		`{"item": "mulch", "price": 28, "per": "yd3", "note": "bark"}`:                                false,
		`{"item": "mulch", "price": 28, "per": "yd3"}, {"item": "plant", "price": 28, "per": "each"}`: true,
	} {
		var document any
		decoder := json.NewDecoder(bytes.NewReader([]byte(list(prices))))
		decoder.UseNumber()
		require.NoError(t, decoder.Decode(&document))
		_, problems := cost.Read("prices.json", []byte(list(prices)))
		require.Equal(t, read, len(problems) == 0, "%s: %v", prices, problems)
		require.Equal(t, read, s.Validate(document) == nil, prices)
	}
}

// FuzzRead ends in a list or in problems that say where.
func FuzzRead(f *testing.F) {
	f.Add(list(`{"item": "pipe", "material": "ABS", "diameter": "2 in", "price": 2.10, "per": "ft"}`))
	f.Add(list(`{"item": "mulch", "price": 1e400, "per": ""}, null, [], {"item": 3}`))
	f.Add(`{"prices": {}}`)
	f.Fuzz(func(t *testing.T, text string) {
		p, problems := cost.Read("prices.json", []byte(text))
		if len(problems) == 0 {
			require.NotEmpty(t, p.Prices)
			return
		}
		require.Nil(t, p)
		for _, p := range problems {
			require.Equal(t, "prices.json", p.File)
			require.NotEmpty(t, p.Found)
		}
	})
}
