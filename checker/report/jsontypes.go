package report

import (
	"strconv"

	"greysill/checker/figures"
	"greysill/checker/quantity"
	"greysill/checker/rulebook"
)

// The types below are the JSON report; schema/report.schema.json says what each
// entry means.

type jsonTool struct {
	Name    string `json:"name"`
	Version string `json:"version,omitempty"`
}

type jsonDesign struct {
	File          string               `json:"file"`
	Title         string               `json:"title,omitempty"`
	Region        string               `json:"region,omitempty"`
	Place         string               `json:"place,omitempty"`
	Revision      string               `json:"revision,omitempty"`
	Outcome       rulebook.Status      `json:"outcome"`
	Units         quantity.System      `json:"units,omitempty"`
	RuleBook      *int                 `json:"rule_book,omitempty"`
	Findings      []jsonFinding        `json:"findings"`
	Excused       []jsonExcused        `json:"excused"`
	NotApplicable []string             `json:"not_applicable"`
	Variances     []jsonVarianceRemark `json:"variances_without_effect"`
	Unjudged      []jsonBroken         `json:"unjudged"`
	Problems      []jsonProblem        `json:"problems"`
	Since         *jsonSince           `json:"since,omitempty"`
	Cautions      []string             `json:"cautions"`
	Figures       []jsonList           `json:"figures,omitempty"`
}

// jsonSince is how a design stands to an earlier report.
type jsonSince struct {
	Report   string              `json:"report"`
	Known    bool                `json:"known"`
	Appeared []jsonNamed         `json:"appeared"`
	Gone     []jsonNamed         `json:"gone"`
	Changed  []jsonChangedMargin `json:"changed"`
	Same     int                 `json:"same"`
}

type jsonNamed struct {
	Rule    string `json:"rule"`
	Subject string `json:"subject"`
}

type jsonChangedMargin struct {
	jsonNamed
	Figure string  `json:"figure"`
	Before float64 `json:"margin_before"`
	Margin float64 `json:"margin"`
}

type jsonFinding struct {
	Rule      string          `json:"rule"`
	Assertion string          `json:"assertion"`
	Status    rulebook.Status `json:"status"`
	Shown     bool            `json:"shown"`
	Subject   jsonSubject     `json:"subject"`
	Line      int             `json:"line"`
	Column    int             `json:"column"`
	Measured  []jsonMeasured  `json:"measured"`
	Lacks     []jsonLack      `json:"lacks"`
	Why       string          `json:"why,omitempty"`
	Remedy    string          `json:"remedy,omitempty"`
	Variance  *jsonVariance   `json:"variance,omitempty"`
	Sources   []jsonSource    `json:"sources,omitempty"`
	SetBy     string          `json:"set_by"`
	Replaces  string          `json:"replaces,omitempty"`
}

type jsonSubject struct {
	Name     string   `json:"name"`
	IDs      []string `json:"ids"`
	Pointers []string `json:"pointers"`
}

type jsonMeasured struct {
	Figure string    `json:"figure"`
	Value  any       `json:"value"`
	Unit   string    `json:"unit,omitempty"`
	Limit  *jsonHeld `json:"limit,omitempty"`
	Margin *float64  `json:"margin,omitempty"`
	Text   string    `json:"text"`
}

type jsonHeld struct {
	Name  string         `json:"name"`
	Bound rulebook.Bound `json:"bound"`
	Value float64        `json:"value"`
	Text  string         `json:"text"`
	SetBy string         `json:"set_by"`
}

type jsonLack struct {
	Pointer string `json:"pointer"`
	Entry   string `json:"entry"`
}

type jsonSource struct {
	Title    string           `json:"title"`
	Place    string           `json:"place,omitempty"`
	Standing figures.Standing `json:"standing"`
}

type jsonExcused struct {
	Rule    string      `json:"rule"`
	Subject jsonSubject `json:"subject"`
	Reason  string      `json:"reason"`
}

type jsonVariance struct {
	Part      string `json:"part"`
	Reason    string `json:"reason"`
	Authority string `json:"authority"`
	Reference string `json:"reference"`
	Expires   string `json:"expires"`
}

type jsonVarianceRemark struct {
	Rule    string `json:"rule"`
	Part    string `json:"part"`
	Pointer string `json:"pointer"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Found   string `json:"found"`
	Remedy  string `json:"remedy,omitempty"`
}

type jsonBroken struct {
	Rule   string `json:"rule"`
	File   string `json:"file"`
	Reason string `json:"reason"`
}

type jsonProblem struct {
	Line     int    `json:"line"`
	Column   int    `json:"column"`
	Pointer  string `json:"pointer"`
	Found    string `json:"found"`
	Expected string `json:"expected,omitempty"`
	Remedy   string `json:"remedy,omitempty"`
}

type jsonBook struct {
	Amendments []jsonAmendment `json:"amendments"`
	Rules      []jsonRule      `json:"rules"`
	SetAside   []jsonAside     `json:"set_aside"`
	Limits     []jsonLimit     `json:"limits"`
}

type jsonAmendment struct {
	Name       string    `json:"name"`
	Region     string    `json:"region,omitempty"`
	Authority  string    `json:"authority"`
	Edition    string    `json:"edition"`
	Checked    string    `json:"checked"`
	About      string    `json:"about,omitempty"`
	Limits     []string  `json:"limits"`
	NotCovered []jsonGap `json:"not_covered"`
}

type jsonGap struct {
	Topic string `json:"topic"`
	Why   string `json:"why"`
}

type jsonAside struct {
	Rule   string     `json:"rule"`
	Reason string     `json:"reason"`
	Source jsonSource `json:"source"`
	SetBy  string     `json:"set_by"`
}

type jsonChange struct {
	Level       rulebook.Level `json:"level"`
	NotShown    rulebook.Level `json:"not_shown"`
	OldLevel    rulebook.Level `json:"old_level"`
	OldNotShown rulebook.Level `json:"old_not_shown"`
	Reason      string         `json:"reason"`
	Source      jsonSource     `json:"source"`
	SetBy       string         `json:"set_by"`
}

type jsonRule struct {
	ID        string         `json:"id"`
	Assertion string         `json:"assertion"`
	Why       string         `json:"why"`
	Sources   []jsonSource   `json:"sources"`
	Level     rulebook.Level `json:"level"`
	NotShown  rulebook.Level `json:"not_shown"`
	SetBy     string         `json:"set_by"`
	Replaces  string         `json:"replaces,omitempty"`
	Changes   []jsonChange   `json:"changes,omitempty"`
}

type jsonLimit struct {
	Name     string     `json:"name"`
	Value    float64    `json:"value"`
	Text     string     `json:"text"`
	Meaning  string     `json:"meaning"`
	Source   jsonSource `json:"source"`
	Note     string     `json:"note,omitempty"`
	SetBy    string     `json:"set_by"`
	Replaced *jsonLimit `json:"replaced,omitempty"`
}

type jsonList struct {
	List  string     `json:"list"`
	Items []jsonItem `json:"items"`
}

type jsonItem struct {
	Subject jsonSubject  `json:"subject"`
	Figures []jsonFigure `json:"figures"`
}

type jsonFigure struct {
	Name  string     `json:"name"`
	Value any        `json:"value"`
	Unit  string     `json:"unit,omitempty"`
	Text  string     `json:"text,omitempty"`
	Lacks []jsonLack `json:"lacks,omitempty"`
}

func subjectJSON(it *figures.Item) jsonSubject {
	return jsonSubject{it.Subject.Name, orEmpty(it.Subject.IDs), orEmpty(it.Subject.Pointers)}
}

func sourcesJSON(sources []figures.Citation) []jsonSource {
	list := make([]jsonSource, len(sources))
	for i, s := range sources {
		list[i] = jsonSource(s)
	}
	return list
}

func figuresJSON(f *figures.Figures, s speaker) []jsonList {
	lists := make([]jsonList, len(f.Lists))
	for i, l := range f.Lists {
		lists[i] = jsonList{l.List.Name, make([]jsonItem, len(l.Items))}
		for k, it := range l.Items {
			lists[i].Items[k] = itemJSON(it, s)
		}
	}
	return lists
}

func itemJSON(it *figures.Item, s speaker) jsonItem {
	item := jsonItem{subjectJSON(it), make([]jsonFigure, len(it.Values))}
	for i, f := range it.List.Fields {
		v := &it.Values[i]
		figure := jsonFigure{Name: f.Name, Value: valueJSON(f, v), Unit: unitJSON(f)}
		if v.Known() {
			figure.Text = s.value(f, v)
		}
		for _, l := range v.Lacks {
			figure.Lacks = append(figure.Lacks, jsonLack{l.Pointer, l.Entry})
		}
		item.Figures[i] = figure
	}
	return item
}

// valueJSON gives a figure as a number, a text or a truth value, nil when it is
// not known.
func valueJSON(f *figures.Field, v *figures.Value) any {
	switch {
	case !v.Known():
		return nil
	case f.Kind == figures.Number:
		return nine(v.Number)
	case f.Kind == figures.Truth:
		return v.Truth
	}
	return v.Text
}

func unitJSON(f *figures.Field) string {
	if f.Kind != figures.Number {
		return ""
	}
	return siUnits[f.Dimension]
}

// siUnits names the unit that numbers have in memory and in JSON, with the
// symbols of the SI Brochure; 1 is the unit of a ratio or a count.
var siUnits = map[quantity.Dimension]string{
	quantity.Length: "m", quantity.Level: "m", quantity.GrainSize: "m", quantity.Area: "m²", quantity.Volume: "m³",
	quantity.EarthVolume: "m³", quantity.Flow: "m³/s", quantity.PeakFlow: "m³/s", quantity.Velocity: "m/s",
	quantity.RainRate: "m/s", quantity.Loading: "m/s", quantity.Percolation: "s/m", quantity.Slope: "1", quantity.Share: "1", quantity.Duration: "s",
	quantity.Temperature: "°C", quantity.DegreeDays: "°C·d", quantity.Angle: "°", quantity.Mass: "kg", quantity.Density: "kg/m³",
	quantity.Radiation: "J/(m²·d)", quantity.Conductivity: "m/s", quantity.Number: "1",
}

// nine rounds to the nine significant digits that rules see, so that what is
// left of binary fractions does not show; -0 becomes 0.
func nine(value float64) float64 {
	if value == 0 {
		return 0
	}
	rounded, err := strconv.ParseFloat(strconv.FormatFloat(value, 'g', 9, 64), 64)
	if err != nil {
		return value
	}
	return rounded
}

func orEmpty(list []string) []string {
	if list == nil {
		return []string{}
	}
	return list
}
