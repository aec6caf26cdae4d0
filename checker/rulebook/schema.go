package rulebook

import (
	"strings"

	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// inputSchema describes the rule input for those who write rules and for OPA's
// type checker, from the catalogue of figures. It is plain on purpose, objects
// with properties and arrays with items: the type checker takes no notice of
// anything finer.
func inputSchema() any {
	root := object("Everything that rules see of a design. A figure that the design does not show is left out of its item.")
	for _, l := range figures.Catalogue {
		at := root
		path := strings.Split(l.Name, ".")
		for _, group := range path[:len(path)-1] {
			at = member(at, group, func() map[string]any {
				return object("Lists of one kind: each pairs every part with something that it must keep clear of.")
			})
		}
		member(at, path[len(path)-1], func() map[string]any { return listSchema(l) })
	}
	root["$schema"] = "http://json-schema.org/draft-07/schema#"
	root["title"] = "Rule input of greysill"
	return root
}

func object(doc string) map[string]any {
	return map[string]any{"type": "object", "description": doc, "properties": map[string]any{}}
}

// member gives the property of that name, making it when it is not there.
func member(of map[string]any, name string, make func() map[string]any) map[string]any {
	properties := of["properties"].(map[string]any)
	if properties[name] == nil {
		properties[name] = make()
	}
	return properties[name].(map[string]any)
}

func listSchema(l *figures.List) map[string]any {
	item := object("One item: " + l.Subject + ".")
	member(item, "subject", func() map[string]any {
		return map[string]any{"type": "string", "description": "Names the item; what proved and excused hold."}
	})
	for _, f := range l.Fields {
		member(item, f.Name, func() map[string]any {
			return map[string]any{"type": string(f.Kind), "description": fieldDoc(f)}
		})
	}
	return map[string]any{"type": "array", "description": l.Doc, "items": item}
}

// fieldDoc says what a field is, its unit, its words and its formula.
func fieldDoc(f *figures.Field) string {
	doc := f.Doc
	if f.Kind == figures.Number {
		doc += " Unit: " + Unit(f.Dimension) + "."
	}
	if len(f.Words) > 0 {
		doc += " One of: " + strings.Join(f.Words, ", ") + "."
	}
	if f.Formula != "" {
		doc += " Formula: " + f.Formula + "."
	}
	return doc
}

var units = map[quantity.Dimension]string{
	quantity.Length:       "m",
	quantity.Level:        "m, of either sign",
	quantity.GrainSize:    "m",
	quantity.Area:         "m²",
	quantity.Volume:       "m³",
	quantity.EarthVolume:  "m³",
	quantity.Flow:         "m³/s",
	quantity.PeakFlow:     "m³/s",
	quantity.Velocity:     "m/s",
	quantity.RainRate:     "m/s",
	quantity.Loading:      "m/s, that is m³ a second on each m²",
	quantity.Load:         "kg/(m²·s)",
	quantity.Percolation:  "s/m",
	quantity.Slope:        "ratio of fall to length",
	quantity.Share:        "ratio from 0 to 1",
	quantity.Duration:     "s",
	quantity.Temperature:  "°C",
	quantity.DegreeDays:   "°C·d",
	quantity.Angle:        "degrees",
	quantity.Mass:         "kg",
	quantity.Density:      "kg/m³",
	quantity.Radiation:    "J/m² a day",
	quantity.Conductivity: "m/s",
	quantity.Number:       "none, a count or ratio",
}

// Unit gives the unit in which rules see numbers of a dimension.
func Unit(d quantity.Dimension) string { return units[d] }
