package figures_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/design"
	"greysill/checker/figures"
	"greysill/checker/quantity"
)

// system draws a design of any parts in any order, with ways that only lead on
// to later ones, and with entries left out.
func system(t *rapid.T) *design.Design {
	d := &design.Design{Dwelling: design.Dwelling{Bedrooms: rapid.IntRange(0, 9).Draw(t, "bedrooms"), Occupants: rapid.IntRange(0, 9).Draw(t, "occupants")}}
	d.Site.Boundary = []design.Point{{X: -60, Y: -60}, {X: 60, Y: -60}, {X: 60, Y: 60}, {X: -60, Y: 60}}
	for range rapid.IntRange(0, 8).Draw(t, "levels") {
		d.Site.Levels = append(d.Site.Levels, design.Spot{X: coordinate(t), Y: coordinate(t), Z: coordinate(t)})
	}
	for i, kind := range rapid.SliceOfN(rapid.SampledFrom(featureKinds), 0, 6).Draw(t, "features") {
		d.Site.Features = append(d.Site.Features, design.Feature{ID: "feature-" + strconv.Itoa(i), Kind: kind, Shape: anyShape(t), Pointer: "/site/features/" + strconv.Itoa(i)})
	}
	kinds := rapid.SliceOfN(rapid.SampledFrom(partKinds), 1, 10).Draw(t, "parts")
	for i, kind := range kinds {
		d.Parts = append(d.Parts, anyPart(t, i, len(kinds), kind))
	}
	for i, kind := range rapid.SliceOfN(rapid.SampledFrom(sourceKinds), 1, 6).Draw(t, "sources") {
		d.Sources = append(d.Sources, design.Source{ID: "source-" + strconv.Itoa(i), Kind: kind, To: outlets(t, 0, len(kinds)), Pointer: "/sources/" + strconv.Itoa(i)})
	}
	return d
}

var (
	featureKinds = []string{"well", "stream", "building", "water service", "tree", "driveway"}
	sourceKinds  = []string{"shower", "washbasin", "clothes washer", "toilet", "kitchen sink", "sump pump"}
	partKinds    = []string{"diverter", "drain pipe", "surge tank", "filter", "planted gravel bed", "mulch basin", "infiltration trench",
		"settling basin", "pond", "spillway", "overflow pipe", "storm inflow", "sewer connection", "septic connection"}
)

func anyPart(t *rapid.T, i, of int, kind string) design.Part {
	p := design.Part{ID: "part-" + strconv.Itoa(i), Kind: kind, Shape: anyShape(t), Pointer: "/parts/" + strconv.Itoa(i)}
	p.To, p.OverflowTo = outlets(t, i+1, of), outlets(t, i+1, of)
	if kind == "diverter" {
		p.BypassTo = outlets(t, i+1, of)
	}
	levels := func(n int) (all []quantity.Quantity) {
		for range rapid.SampledFrom([]int{0, 1, n}).Draw(t, "levels") {
			all = append(all, metres(coordinate(t)))
		}
		return all
	}
	p.Floor, p.Surface, p.Inverts = levels(len(p.Outline)), levels(len(p.Outline)), levels(len(p.Path))
	if rapid.Bool().Draw(t, "more") {
		p.WaterLevel, p.Width, p.Cover = metres(coordinate(t)), metres(math.Abs(coordinate(t))), metres(math.Abs(coordinate(t)))
	}
	return p
}

func metres(x float64) quantity.Quantity {
	return quantity.Quantity{Value: x, Text: fmt.Sprintf("%g m", x)}
}

func coordinate(t *rapid.T) float64 { return rapid.Float64Range(-50, 50).Draw(t, "coordinate") }

func anyShape(t *rapid.T) design.Shape {
	at := design.Point{X: coordinate(t), Y: coordinate(t)}
	size := rapid.Float64Range(0, 5).Draw(t, "size")
	switch rapid.SampledFrom([]string{"nothing", "point", "path", "outline", "outline"}).Draw(t, "shape") {
	case "nothing":
		return design.Shape{}
	case "point":
		return design.Shape{At: &at}
	case "path":
		return design.Shape{Path: []design.Point{at, {X: at.X + size, Y: at.Y}, {X: at.X + size, Y: at.Y + size}}}
	default:
		return design.Shape{Outline: []design.Point{at, {X: at.X + size, Y: at.Y}, {X: at.X + size, Y: at.Y + 2*size}, {X: at.X, Y: at.Y + size}}}
	}
}

// outlets draws ways to parts from one number on, or out of the system.
func outlets(t *rapid.T, from, of int) []design.Outlet {
	var ways []design.Outlet
	for range rapid.IntRange(0, 3).Draw(t, "ways") {
		to := rapid.IntRange(from, of).Draw(t, "to")
		o := design.Outlet{Target: "part-" + strconv.Itoa(to)}
		if to == of {
			o.Target = "feature-0"
		}
		if rapid.Bool().Draw(t, "stated") {
			share := rapid.Float64Range(0, 0.5).Draw(t, "share")
			o.Share = quantity.Quantity{Value: share, Text: "a share"}
		}
		ways = append(ways, o)
	}
	return ways
}

// TestEveryFigureIsFiniteOrLacksEntries also holds every list to its shape.
func TestEveryFigureIsFiniteOrLacksEntries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := figures.Compute(system(t))
		require.Len(t, f.Lists, len(figures.Catalogue))
		for i, l := range f.Lists {
			require.Same(t, figures.Catalogue[i], l.List)
			names := map[string]bool{}
			for _, item := range l.Items {
				require.False(t, names[item.Subject.Name], "%s has %s twice", l.List.Name, item.Subject.Name)
				names[item.Subject.Name] = true
				require.Len(t, item.Values, len(l.List.Fields))
				for k, field := range l.List.Fields {
					requireSound(t, field, &item.Values[k])
				}
			}
		}
	})
}

func requireSound(t require.TestingT, field *figures.Field, v *figures.Value) {
	require.False(t, math.IsNaN(v.Number) || math.IsInf(v.Number, 0), "%s is %v", field.Name, v.Number)
	for _, l := range v.Lacks {
		require.NotEmpty(t, l.Entry)
		require.True(t, strings.HasPrefix(l.Pointer, "/"), l.Pointer)
	}
	if !v.Known() {
		require.Zero(t, v.Number)
		require.Empty(t, v.Text)
		require.False(t, v.Truth)
	}
	for _, in := range v.Inputs {
		require.NotEmpty(t, in.Name)
		require.NotEqual(t, in.Pointer == "", in.Value == "", "an input stands in the document or is told")
	}
}

func TestTheSameDesignGivesTheSameFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := system(t)
		require.Equal(t, figures.Compute(d), figures.Compute(d))
	})
}

func TestDesignsAreComputedAtTheSameTime(t *testing.T) {
	d := read(t, yard)
	want := figures.Compute(d)
	var wait sync.WaitGroup
	got := make([]*figures.Figures, 8)
	for i := range got {
		wait.Go(func() { got[i] = figures.Compute(d) })
	}
	wait.Wait()
	for _, f := range got {
		require.Equal(t, want, f)
	}
}

// TestWaterIsNeitherLostNorMade: what the fixtures on the system give in a day
// comes out where no way leads on. Where a way is not drawn the flows are
// unknown, so that there is nothing to sum.
func TestWaterIsNeitherLostNorMade(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := system(t)
		for i := range d.Parts {
			d.Parts[i].OverflowTo = nil
			if len(d.Parts[i].To) == 0 {
				d.Parts[i].Kind, d.Parts[i].BypassTo = "sewer connection", nil
			}
		}
		for i := range d.Sources {
			if len(d.Sources[i].To) == 0 {
				d.Sources[i].To = []design.Outlet{{Target: "part-0"}}
			}
		}
		intoParts(d)
		f := figures.Compute(d)
		daily := known(t, f, "system", "the system", "daily_flow").(float64)
		for _, season := range []string{"warm_season_flow", "bypass_season_flow"} {
			sum := 0.0
			for _, p := range d.Parts {
				if len(p.To) == 0 {
					sum += known(t, f, "flows", p.ID, season).(float64)
				}
			}
			require.InDelta(t, daily, sum, daily*1e-9)
		}
	})
}

// TestWaterEndsSafelyWhereEveryEndIsSafe compares the walk along all ways with
// the ends that it comes to.
func TestWaterEndsSafelyWhereEveryEndIsSafe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := system(t)
		kinds := map[string]string{}
		for _, p := range d.Parts {
			kinds[p.ID] = p.Kind
		}
		for _, item := range figures.Compute(d).List("inflows") {
			ends, safely, inSewer := item.Value("ends"), item.Value("ends_safely"), item.Value("ends_in_sewer")
			if !ends.Known() {
				require.False(t, safely.Truth || inSewer.Truth)
				continue
			}
			safe, sewer := true, true
			for _, end := range strings.Split(ends.Text, ", ") {
				connection := strings.HasSuffix(kinds[end], "connection")
				sewer = sewer && connection
				safe = safe && (connection || kinds[end] == "mulch basin" || kinds[end] == "infiltration trench")
			}
			require.Equal(t, []bool{safe, sewer}, []bool{safely.Truth, inSewer.Truth}, ends.Text)
		}
	})
}

// intoParts sends what leaves the system to a connection drawn for it.
func intoParts(d *design.Design) {
	end := design.Part{ID: "end", Kind: "sewer connection", Pointer: "/parts/" + strconv.Itoa(len(d.Parts))}
	d.Parts = append(d.Parts, end)
	redirect := func(ways []design.Outlet) {
		for i := range ways {
			if ways[i].Target == "feature-0" {
				ways[i].Target = end.ID
			}
		}
	}
	for i := range d.Parts {
		redirect(d.Parts[i].To)
		redirect(d.Parts[i].BypassTo)
	}
	for i := range d.Sources {
		redirect(d.Sources[i].To)
	}
}

// TestMovingTheGrid changes no figure.
func TestMovingTheGrid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := system(t)
		before := figures.Compute(d)
		dx, dy := rapid.Float64Range(-1e5, 1e5).Draw(t, "dx"), rapid.Float64Range(-1e5, 1e5).Draw(t, "dy")
		after := figures.Compute(shifted(d, dx, dy))
		for i, l := range before.Lists {
			if strings.HasPrefix(l.List.Name, "clearances.") || l.List.Name == "reaches" || l.List.Name == "parts" {
				requireAlike(t, l, after.Lists[i], 1e-5)
			}
		}
	})
}

func shifted(d *design.Design, dx, dy float64) *design.Design {
	moved := func(ps []design.Point) []design.Point {
		ps = slices.Clone(ps)
		for i := range ps {
			ps[i] = design.Point{X: ps[i].X + dx, Y: ps[i].Y + dy}
		}
		return ps
	}
	shape := func(s *design.Shape) {
		s.Path, s.Outline = moved(s.Path), moved(s.Outline)
		if s.At != nil {
			s.At = &moved([]design.Point{*s.At})[0]
		}
	}
	c := *d
	c.Site.Boundary = moved(d.Site.Boundary)
	c.Parts, c.Site.Features, c.Site.Levels = slices.Clone(d.Parts), slices.Clone(d.Site.Features), slices.Clone(d.Site.Levels)
	for i := range c.Parts {
		shape(&c.Parts[i].Shape)
	}
	for i := range c.Site.Features {
		shape(&c.Site.Features[i].Shape)
	}
	for i := range c.Site.Levels {
		c.Site.Levels[i].X += dx
		c.Site.Levels[i].Y += dy
	}
	return &c
}

// requireAlike compares two lists, numbers within a tolerance of their size.
func requireAlike(t require.TestingT, a, b figures.Items, tolerance float64) {
	require.Len(t, b.Items, len(a.Items))
	for i := range a.Items {
		for k, field := range a.List.Fields {
			v, w := &a.Items[i].Values[k], &b.Items[i].Values[k]
			require.Equal(t, v.Lacks, w.Lacks)
			require.Equal(t, v.Text, w.Text)
			require.Equal(t, v.Truth, w.Truth)
			require.InDelta(t, v.Number, w.Number, tolerance*max(1, math.Abs(v.Number)), "%s of %s", field.Name, a.Items[i].Subject.Name)
		}
	}
}

// TestFeetAndMetresDrawTheSame: the yard drawn in feet has the figures of the
// yard drawn in metres.
func TestFeetAndMetresDrawTheSame(t *testing.T) {
	metric := yard.with(entries{
		"site":  strings.Replace(yard["site"], `"features"`, `"levels": [[0, 0, 10], [60, 0, 13], [60, 40, 13.5], [0, 40, 10]], "features"`, 1),
		"parts": strings.Replace(yard["parts"], `"to": "basin-1"`, `"floor": "9.4 m", "water_level": "10.5 m", "to": "basin-1"`, 1),
	})
	inFeet := entries{}
	for name, text := range metric {
		if name == "site" || name == "parts" {
			text = scaled(text)
		}
		inFeet[name] = strings.ReplaceAll(text, `"unit": "m"`, `"unit": "ft"`)
	}
	a, b := compute(t, metric), compute(t, inFeet)
	for i := range a.Lists {
		requireAlike(t, a.Lists[i], b.Lists[i], 1e-9)
	}
	require.NotZero(t, known(t, b, "beds", "bed-1", "mean_depth"))
}

// scaled turns every number that is no quantity into feet; in these texts those
// are the numbers after "[", " " or before "]".
func scaled(text string) string {
	var out strings.Builder
	quoted := false
	for i := 0; i < len(text); i++ {
		c := text[i]
		if c == '"' {
			quoted = !quoted
		}
		if quoted || (c < '0' || c > '9') && c != '-' {
			out.WriteByte(c)
			continue
		}
		end := i
		for end < len(text) && strings.IndexByte("0123456789.-", text[end]) >= 0 {
			end++
		}
		x, err := strconv.ParseFloat(text[i:end], 64)
		if err != nil {
			panic(err)
		}
		out.WriteString(strconv.FormatFloat(x/0.3048, 'g', -1, 64))
		i = end - 1
	}
	return out.String()
}

func BenchmarkCompute(b *testing.B) {
	for name, file := range map[string]string{"bed": "faulty-bed", "basins": "mulch-basins"} {
		b.Run(name, func(b *testing.B) {
			d, problems := design.ReadFile("../../examples/" + file + ".json")
			require.Empty(b, problems)
			b.ReportAllocs()
			for b.Loop() {
				figures.Compute(d)
			}
		})
	}
}
