package checker_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/geometry"
	"greysill/checker/quantity"
)

// published is one check value from outside the project; the README beside the
// files says what each entry means.
type published struct {
	Source struct {
		Title    string `json:"title"`
		Place    string `json:"place"`
		Standing string `json:"standing"`
	} `json:"source"`
	Computes  string             `json:"computes"`
	Inputs    json.RawMessage    `json:"inputs"`
	Expected  map[string]float64 `json:"expected"`
	Not       map[string]float64 `json:"not"`
	Tolerance float64            `json:"tolerance"`
	Why       string             `json:"why"`
}

// computations has a function for every name that "computes" may have. It gives
// the results by the names that "expected" and "not" use.
var computations = map[string]func(inputs []byte) (map[string]float64, error){
	"conversion":        conversion,
	"flow by occupants": flowByOccupants,
	"polygon area":      polygonArea,
	"distance":          distance,
	"drain slope":       drainSlope,
}

// register adds a computation, for the files that hold one topic's.
func register(name string, compute func(inputs []byte) (map[string]float64, error)) bool {
	if computations[name] != nil {
		panic("two computations named " + name)
	}
	computations[name] = compute
	return true
}

// results takes what functions return; the first error stays.
type results struct{ err error }

func (r *results) of(value float64, err error) float64 {
	if r.err == nil {
		r.err = err
	}
	return value
}

// computation makes a computation of a function that takes its inputs as a struct.
func computation[T any](compute func(in T, r *results) map[string]float64) func([]byte) (map[string]float64, error) {
	return func(inputs []byte) (map[string]float64, error) {
		var in T
		if err := strict(inputs, &in); err != nil {
			return nil, err
		}
		var r results
		computed := compute(in, &r)
		return computed, r.err
	}
}

func TestPublishedValues(t *testing.T) {
	files, err := filepath.Glob("../testdata/published/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files, "no published values found")

	standings := map[string]int{"published": 0, "recomputed": 0, "from memory": 0}
	used := make(map[string]bool)
	total, mistakes := 0, 0
	for _, file := range files {
		for i, p := range readPublished(t, file) {
			t.Run(fmt.Sprintf("%s/%d", filepath.Base(file), i+1), func(t *testing.T) {
				require.Contains(t, standings, p.Source.Standing)
				p.check(t)
			})
			standings[p.Source.Standing]++
			used[p.Computes] = true
			total++
			if p.Not != nil {
				mistakes++
			}
		}
	}
	require.ElementsMatch(t, slices.Collect(maps.Keys(computations)), slices.Collect(maps.Keys(used)), "computations and the names that the files use")
	t.Logf("%d values in %d files: %d published, %d recomputed from published figures, %d from memory; %d of them are known mistakes that must not come out",
		total, len(files), standings["published"], standings["recomputed"], standings["from memory"], mistakes)
}

func readPublished(t *testing.T, file string) []published {
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	var entries []published
	require.NoError(t, strict(text, &entries), file)
	require.NotEmpty(t, entries, file)
	return entries
}

func (p *published) check(t *testing.T) {
	require.NotEmpty(t, p.Source.Title, "an entry needs a source")
	require.NotEmpty(t, p.Source.Place, "a source needs the place in it")
	require.NotEmpty(t, p.Why, "a tolerance needs a reason")
	require.Positive(t, p.Tolerance)
	require.NotEqual(t, p.Expected == nil, p.Not == nil, "an entry has either expected or not")
	require.Positive(t, len(p.Expected)+len(p.Not), "an entry compares something")
	compute := computations[p.Computes]
	require.NotNil(t, compute, "nothing computes %q", p.Computes)

	results, err := compute(p.Inputs)
	require.NoError(t, err)
	for name, want := range p.Expected {
		require.Contains(t, results, name)
		require.InDelta(t, want, results[name], p.Tolerance, "%s; tolerance: %s", name, p.Why)
	}
	for name, mistake := range p.Not {
		require.Contains(t, results, name)
		require.Greater(t, math.Abs(results[name]-mistake), p.Tolerance, "%s: %s", name, p.Why)
	}
}

// strict reads JSON and refuses names that v does not have.
func strict(text []byte, v any) error {
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	return d.Decode(v)
}

// conversion gives a quantity in another unit.
func conversion(inputs []byte) (map[string]float64, error) {
	var in struct{ Quantity, Unit string }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	value, err := inUnit(in.Quantity, in.Unit)
	return map[string]float64{"value": value}, err
}

// inUnit counts how often the unit goes into the quantity.
func inUnit(text, unit string) (float64, error) {
	q, dimensions, err := quantity.ParseAny(text)
	if err != nil {
		return 0, err
	}
	one, same, err := quantity.ParseAny("1 " + unit)
	if err != nil {
		return 0, err
	}
	if !slices.ContainsFunc(same, func(d quantity.Dimension) bool { return slices.Contains(dimensions, d) }) {
		return 0, fmt.Errorf("%q cannot be given in %q", text, unit)
	}
	return q.Value / one.Value, nil
}

// flowByOccupants gives the occupants and their daily flow.
func flowByOccupants(inputs []byte) (map[string]float64, error) {
	var in struct {
		Bedrooms         int
		Bathing, Laundry bool
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	occupants := figures.OccupantsByBedrooms(in.Bedrooms)
	flow := figures.DailyFlow(occupants, in.Bathing, in.Laundry)
	return map[string]float64{
		"occupants": float64(occupants),
		"gal/d":     flow / si("1 gal/d"),
		"L/d":       flow / si("1 L/d"),
	}, nil
}

// polygonArea gives the area inside a ring of corners in the unit named.
func polygonArea(inputs []byte) (map[string]float64, error) {
	var in struct {
		Unit    string
		Corners [][2]float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	area := geometry.Outline(points(in.Corners, si("1 "+in.Unit))).Area()
	return map[string]float64{"m2": area, "ft2": area / si("1 ft2"), "acre": area / si("1 acre")}, nil
}

// distance gives the least distance between two shapes.
func distance(inputs []byte) (map[string]float64, error) {
	var in struct{ A, B shape }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	return map[string]float64{"distance": geometry.Distance(in.A.geometry(), in.B.geometry())}, nil
}

// drainSlope gives the slope of a straight-graded pipe between two inverts.
func drainSlope(inputs []byte) (map[string]float64, error) {
	var in struct {
		Unit    string
		Path    [][2]float64
		Inverts []quantity.Quantity
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	pipe := design.Part{ID: "pipe", Kind: "drain pipe", Inverts: in.Inverts}
	for _, p := range points(in.Path, si("1 "+in.Unit)) {
		pipe.Path = append(pipe.Path, design.Point{X: p.X, Y: p.Y})
	}
	reaches := figures.Compute(&design.Design{Parts: []design.Part{pipe}}).List("reaches")
	if len(reaches) != 1 || !reaches[0].Value("slope").Known() {
		return nil, errors.New("the pipe is not one reach with a slope")
	}
	return map[string]float64{"in/ft": reaches[0].Value("slope").Number / si("1 in/ft")}, nil
}

// shape is a point, a line or a ring, as a design draws them.
type shape struct {
	At            *[2]float64
	Path, Outline [][2]float64
}

func (s shape) geometry() geometry.Shape {
	switch {
	case s.At != nil:
		return geometry.At(points([][2]float64{*s.At}, 1)[0])
	case s.Path != nil:
		return geometry.Path(points(s.Path, 1))
	default:
		return geometry.Outline(points(s.Outline, 1))
	}
}

func points(coordinates [][2]float64, unit float64) []geometry.Point {
	list := make([]geometry.Point, len(coordinates))
	for i, c := range coordinates {
		list[i] = geometry.Point{X: c[0] * unit, Y: c[1] * unit}
	}
	return list
}

// si gives the value of a quantity in the SI unit.
func si(text string) float64 {
	q, _, err := quantity.ParseAny(text)
	if err != nil {
		panic(err)
	}
	return q.Value
}
