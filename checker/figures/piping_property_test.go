package figures_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"greysill/checker/design"
	"greysill/checker/figures"
)

// piped draws a system with pipes, storms and services drawn in some detail.
func piped(t *rapid.T) *design.Design {
	d := system(t)
	for range 30 {
		d.Site.Levels = append(d.Site.Levels, design.Spot{X: coordinate(t), Y: coordinate(t), Z: coordinate(t)})
	}
	d.Site.Climate = &design.Climate{DesignStorm: &design.Storm{
		Intensity: metres(rapid.Float64Range(0, 1e-4).Draw(t, "intensity")), Duration: metres(rapid.Float64Range(0, 1e5).Draw(t, "duration"))}}
	for i := range rapid.IntRange(0, 4).Draw(t, "services") {
		s := design.Service{ID: "service-" + string(rune('a'+i)), Kind: "gas", Pointer: "/site/services/0", Depth: metres(rapid.Float64Range(0, 3).Draw(t, "depth"))}
		s.Path = []design.Point{{X: coordinate(t), Y: coordinate(t)}, {X: coordinate(t), Y: coordinate(t)}, {X: coordinate(t), Y: coordinate(t)}}
		s.Diameter = metres(rapid.Float64Range(0, 0.2).Draw(t, "diameter"))
		d.Site.Services = append(d.Site.Services, s)
	}
	for i := range d.Parts {
		p := &d.Parts[i]
		p.Diameter = metres(rapid.Float64Range(0, 0.3).Draw(t, "diameter"))
		p.Material = rapid.SampledFrom([]string{"", "ABS", "concrete", "bamboo"}).Draw(t, "material")
		p.Catchment, p.RunoffCoefficient = metres(rapid.Float64Range(0, 1e4).Draw(t, "catchment")), new(rapid.Float64Range(0, 1).Draw(t, "coefficient"))
		p.Level, p.InletLevel, p.OutletLevel = metres(coordinate(t)), metres(coordinate(t)), metres(coordinate(t))
		p.CrestLevel, p.CrestLength = metres(coordinate(t)), metres(rapid.Float64Range(0, 5).Draw(t, "crest"))
		p.RimLevel, p.SideSlope = metres(coordinate(t)), metres(rapid.SampledFrom([]float64{0, 0.5, 100}).Draw(t, "sides"))
		p.ChannelSlope, p.Roughness = metres(rapid.Float64Range(0, 1).Draw(t, "channel")), rapid.SampledFrom([]float64{0, 0.011, 0.03}).Draw(t, "roughness")
		p.Concentration = metres(rapid.Float64Range(0, 1e4).Draw(t, "concentration"))
		if len(p.Path) > 0 {
			p.Cleanouts = p.Path[1:]
			p.Fittings = []design.Fitting{{Kind: "45° bend", At: &p.Path[rapid.IntRange(0, 2).Draw(t, "at")]}, {Kind: "90° bend"}}[:rapid.IntRange(0, 2).Draw(t, "fittings")]
		}
	}
	return d
}

func TestPipesAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := piped(t)
		for _, l := range figures.Compute(d).Lists {
			names := map[string]bool{}
			for _, item := range l.Items {
				require.False(t, names[item.Subject.Name], "%s has %s twice", l.List.Name, item.Subject.Name)
				names[item.Subject.Name] = true
				for k, field := range l.List.Fields {
					requireSound(t, field, &item.Values[k])
				}
			}
		}
		require.Equal(t, figures.Compute(d), figures.Compute(d))
	})
}

// TestCoverAndCapacityKeepTheirOrder: least is never more than greatest, and a
// depth is never more than the pipe.
func TestCoverAndCapacityKeepTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := figures.Compute(piped(t))
		inOrder := func(list, least, greatest string) {
			for _, item := range f.List(list) {
				if low, high := item.Value(least), item.Value(greatest); low.Known() && high.Known() {
					require.LessOrEqual(t, low.Number, high.Number, "%s of %s", least, item.Subject.Name)
				}
			}
		}
		inOrder("cover", "least_cover", "greatest_cover")
		inOrder("pipe_flow", "least_full_capacity", "full_capacity")
		inOrder("pipe_flow", "full_capacity", "greatest_full_capacity")
		inOrder("pipe_flow", "peak_flow_ipc", "peak_flow_chicago")
		inOrder("pipe_flow", "depth_ratio_ipc", "depth_ratio_chicago")
		inOrder("cleanouts", "sharpest_bend", "bends_without_cleanout")
		inOrder("storms", "least_peak_flow", "greatest_peak_flow")
	})
}

// TestFeetAndMetresPipeTheSame: a yard drawn in feet, with quantities in US
// units, has the figures of the yard drawn in metres.
func TestFeetAndMetresPipeTheSame(t *testing.T) {
	metric := buried(slope, `{"id": "gas-1", "kind": "gas", "path": [[12, 0], [12, 20]], "depth": "609.6 mm", "diameter": "25.4 mm"}`,
		`"path": [[10, 10], [20, 10], [20, 20]], "inverts": ["9.144 m", "8.8392 m", "8.5344 m"], "diameter": "76.2 mm", "material": "ABS", "cleanouts": [[15, 10]]`)
	metric["sources"] = strings.ReplaceAll(washing["sources"], `"to": "basin-1"`, `"to": "pipe-1"`)
	us := metric.with(entries{})
	for name, text := range us {
		if name == "site" || name == "parts" {
			us[name] = scaled(strings.ReplaceAll(text, `"unit": "m"`, `"unit": "ft"`))
		}
	}
	for written, same := range map[string]string{"609.6 mm": "24 in", "25.4 mm": "1 in", "76.2 mm": "3 in", "9.144 m": "30 ft", "8.8392 m": "29 ft", "8.5344 m": "28 ft"} {
		us["site"] = strings.ReplaceAll(us["site"], `"`+written+`"`, `"`+same+`"`)
		us["parts"] = strings.ReplaceAll(us["parts"], `"`+written+`"`, `"`+same+`"`)
	}
	a, b := compute(t, metric), compute(t, us)
	for i := range a.Lists {
		requireAlike(t, a.Lists[i], b.Lists[i], 1e-9)
	}
	require.NotZero(t, known(t, b, "pipe_flow", "pipe-1 reach 1", "velocity_ipc"))
	require.NotZero(t, known(t, b, "cover", "pipe-1 reach 2", "least_cover"))
	require.NotZero(t, known(t, b, "crossings", "pipe-1 reach 1 and gas-1", "vertical_clearance"))
}
