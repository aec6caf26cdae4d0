package checker_test

import (
	"encoding/json"
	"fmt"
	"math"

	"greysill/checker/hydraulics"
	"greysill/checker/quantity"
)

var (
	_ = register("drain pipe", drainPipe)
	_ = register("part-full pipe", partFullPipe)
	_ = register("part-full pipe by its flow", partFullByFlow)
	_ = register("pipe section", pipeSection)
	_ = register("depth of greatest flow in a circle", greatestFlow)
	_ = register("diameter of a half-full pipe", halfFullDiameter)
	_ = register("friction slope", frictionSlope)
	_ = register("drain at another slope", drainAtAnotherSlope)
	_ = register("channel", channel)
	_ = register("normal depth", normalDepth)
	_ = register("fixture units", fixtureUnits)
	_ = register("continuous flow in fixture units", continuousFlow)
	_ = register("drain capacity", drainCapacity)
	_ = register("weir flow", weirFlow)
	_ = register("weir head", weirHead)
	_ = register("weir length", weirLength)
	_ = register("notch twice as long as its head", doubleNotch)
	_ = register("notch angle", notchAngle)
	_ = register("broad crest", broadCrest)
	_ = register("orifice", orifice)
	_ = register("drain time", drainTime)
	_ = register("orifices to drain a tank", drainOrifices)
	_ = register("rational method", rationalMethod)
	_ = register("modified rational method", modifiedRational)
	_ = register("runoff volume", runoffVolume)
	_ = register("runoff depth", runoffDepth)
	_ = register("storm risk", stormRisk)
	_ = register("roof flow", roofFlow)
	_ = register("leader", leader)
	_ = register("flow through a sloping layer", slopingLayer)
	_ = register("constant-head conductivity", constantHead)
	_ = register("conductivity by void ratio", kozeny)
	_ = register("porosity", porosity)
	_ = register("bed section by Darcy", bedSection)
	_ = register("clogged bed", cloggedBed)
)

// amount is a number, or a quantity with its unit, which becomes SI.
type amount float64

func (a *amount) UnmarshalJSON(text []byte) error {
	var written string
	if json.Unmarshal(text, &written) != nil {
		return json.Unmarshal(text, (*float64)(a))
	}
	q, _, err := quantity.ParseAny(written)
	*a = amount(q.Value)
	return err
}

// flows gives a discharge in the units that sources use.
func flows(discharge float64) map[string]float64 {
	return map[string]float64{
		"m3/s": discharge, "L/s": discharge / si("1 L/s"), "cfs": discharge / si("1 cfs"), "gpm": discharge / si("1 gpm"),
		"cfm": discharge / si("1 cfs") * 60, "m3/h": discharge * 3600,
	}
}

// lengths gives a length in the units that sources use.
func lengths(length float64) map[string]float64 {
	return map[string]float64{"m": length, "cm": length * 100, "ft": length / si("1 ft"), "in": length / si("1 in")}
}

func drainPipe(inputs []byte) (map[string]float64, error) {
	var in struct {
		Diameter, Slope, Roughness amount
		DepthRatio                 float64 `json:"depth_ratio"`
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	pipe := hydraulics.Pipe{Diameter: float64(in.Diameter), Slope: float64(in.Slope), Roughness: float64(in.Roughness)}
	flow, err := pipe.At(in.DepthRatio * pipe.Diameter)
	results := flows(flow.Discharge)
	results["m/s"], results["ft/s"] = flow.Velocity, flow.Velocity/si("1 ft/s")
	return results, err
}

func partFullPipe(inputs []byte) (map[string]float64, error) {
	var in struct {
		DepthRatio float64 `json:"depth_ratio"`
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	r, err := hydraulics.HydraulicElements(in.DepthRatio)
	return map[string]float64{"area": r.Area, "radius": r.Radius, "velocity": r.Velocity, "discharge": r.Discharge}, err
}

func partFullByFlow(inputs []byte) (map[string]float64, error) {
	var in struct{ Discharge float64 } // over the full pipe's
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	pipe := hydraulics.Pipe{Diameter: 1, Slope: 0.01, Roughness: 0.013}
	full, err := pipe.Full()
	if err != nil {
		return nil, err
	}
	flow, err := pipe.Carrying(in.Discharge * full.Discharge)
	return map[string]float64{"depth ratio": flow.Depth, "velocity": flow.Velocity / full.Velocity}, err
}

func pipeSection(inputs []byte) (map[string]float64, error) {
	var in struct{ Diameter, Depth amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	s, err := hydraulics.CircularSection(float64(in.Diameter), float64(in.Depth))
	return map[string]float64{"area": s.Area, "perimeter": s.Perimeter, "radius": s.Radius()}, err
}

// greatestFlow finds where the velocity, as a power of the hydraulic radius, is
// greatest, and where the discharge is: 1/2 for Chézy's formula, 2/3 for Manning's.
func greatestFlow(inputs []byte) (map[string]float64, error) {
	var in struct{ Power float64 }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	fastest, most := 0.0, 0.0
	var velocity, discharge float64
	for i := 1; i <= 10_000; i++ {
		depth := float64(i) / 10_000
		s, err := hydraulics.CircularSection(1, depth)
		if err != nil {
			return nil, err
		}
		v := math.Pow(s.Radius(), in.Power)
		if v > fastest {
			fastest, velocity = v, depth
		}
		if v*s.Area > most {
			most, discharge = v*s.Area, depth
		}
	}
	return map[string]float64{"velocity": velocity, "discharge": discharge}, nil
}

// halfFullDiameter uses that the flow goes with the diameter to the 8/3.
func halfFullDiameter(inputs []byte) (map[string]float64, error) {
	var in struct{ Flow, Slope, Roughness amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	metre := hydraulics.Pipe{Diameter: 1, Slope: float64(in.Slope), Roughness: float64(in.Roughness)}
	flow, err := metre.At(0.5)
	return map[string]float64{"m": math.Pow(float64(in.Flow)/flow.Discharge, 3.0/8)}, err
}

func frictionSlope(inputs []byte) (map[string]float64, error) {
	var in struct {
		Diameter, Bottom, Depth, Roughness, Flow amount
		SideSlope                                float64 `json:"side_slope"`
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	section, err := hydraulics.TrapezoidalSection(float64(in.Bottom), in.SideSlope, float64(in.Depth))
	if in.Diameter > 0 {
		section, err = hydraulics.CircularSection(float64(in.Diameter), float64(in.Depth))
	}
	if err != nil {
		return nil, err
	}
	slope, err := hydraulics.FrictionSlope(float64(in.Roughness), section, float64(in.Flow))
	return map[string]float64{"slope": slope}, err
}

func drainAtAnotherSlope(inputs []byte) (map[string]float64, error) {
	var in struct{ Flow, Slope, Other amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	pipe := hydraulics.Pipe{Diameter: 0.1, Slope: float64(in.Slope), Roughness: 0.013}
	from, err := pipe.Full()
	if err != nil {
		return nil, err
	}
	pipe.Slope = float64(in.Other)
	to, err := pipe.Full()
	return flows(float64(in.Flow) * to.Discharge / from.Discharge), err
}

type channelInputs struct {
	Bottom, Depth, Slope, Roughness, Flow amount
	SideSlope                             float64 `json:"side_slope"`
}

func (in channelInputs) channel() hydraulics.Channel {
	return hydraulics.Channel{Bottom: float64(in.Bottom), SideSlope: in.SideSlope, Slope: float64(in.Slope), Roughness: float64(in.Roughness)}
}

func channel(inputs []byte) (map[string]float64, error) {
	var in channelInputs
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	flow, err := in.channel().At(float64(in.Depth))
	return flows(flow.Discharge), err
}

func normalDepth(inputs []byte) (map[string]float64, error) {
	var in channelInputs
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	flow, err := in.channel().Carrying(float64(in.Flow))
	return lengths(flow.Depth), err
}

func fixtureUnits(inputs []byte) (map[string]float64, error) {
	var in struct{ Fixture hydraulics.Fixture }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	units, ok := hydraulics.UPCFixtureUnits.Of(in.Fixture)
	if !ok {
		return nil, fmt.Errorf("no fixture units for %q", in.Fixture)
	}
	return map[string]float64{"units": float64(units)}, nil
}

func continuousFlow(inputs []byte) (map[string]float64, error) {
	var in struct{ Flow amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	chicago, err := hydraulics.ChicagoUnitFlow.Units(float64(in.Flow))
	if err != nil {
		return nil, err
	}
	ipc, err := hydraulics.IPCUnitFlow.Units(float64(in.Flow))
	return map[string]float64{"Chicago": chicago, "IPC": ipc}, err
}

func drainCapacity(inputs []byte) (map[string]float64, error) {
	var in struct {
		Table           string
		Diameter, Slope amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	tables := map[string]hydraulics.DrainCapacity{
		"UPC horizontal": hydraulics.UPCHorizontalDrain, "IPC building drain": hydraulics.IPCBuildingDrain, "IPC branch": hydraulics.IPCBranch,
	}
	units, _, ok := tables[in.Table].MostUnits(float64(in.Diameter), float64(in.Slope))
	if !ok {
		return nil, fmt.Errorf("the table %q has no such cell", in.Table)
	}
	return map[string]float64{"units": units}, nil
}

func porosity(inputs []byte) (map[string]float64, error) {
	var in struct {
		VoidRatio float64 `json:"void_ratio"`
		Porosity  float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	if in.VoidRatio > 0 {
		n, err := hydraulics.Porosity(in.VoidRatio)
		return map[string]float64{"porosity": n}, err
	}
	e, err := hydraulics.VoidRatio(in.Porosity)
	return map[string]float64{"void ratio": e}, err
}

func slopingLayer(inputs []byte) (map[string]float64, error) {
	var in struct {
		Conductivity, Thickness amount
		Angle                   float64 // radians
		Head, Length            amount  // between two piezometers; none where the water runs along the layer
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	gradient := math.Sin(in.Angle)
	if in.Length > 0 {
		gradient = float64(in.Head) * math.Cos(in.Angle) / float64(in.Length)
	}
	q, err := hydraulics.DarcyDischarge(float64(in.Conductivity), float64(in.Thickness)*math.Cos(in.Angle), gradient)
	return flows(q), err
}

// constantHead is the conductivity at which Darcy's law gives the flow measured.
func constantHead(inputs []byte) (map[string]float64, error) {
	var in struct{ Length, Area, Head, Volume, Time amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	perUnit, err := hydraulics.DarcyDischarge(1, float64(in.Area), float64(in.Head/in.Length))
	return map[string]float64{"cm/s": float64(in.Volume/in.Time) / perUnit * 100}, err
}

func kozeny(inputs []byte) (map[string]float64, error) {
	var in struct {
		Conductivity amount
		From, To     float64 // void ratios
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	from, err := hydraulics.Porosity(in.From)
	if err != nil {
		return nil, err
	}
	to, err := hydraulics.Porosity(in.To)
	if err != nil {
		return nil, err
	}
	ratio, err := hydraulics.KozenyRatio(from, to)
	return map[string]float64{"cm/s": ratio * float64(in.Conductivity) * 100}, err
}

func bedSection(inputs []byte) (map[string]float64, error) {
	var in struct {
		Flow, Conductivity, Depth amount
		Gradient                  float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	area, err := hydraulics.DarcySection(float64(in.Flow), float64(in.Conductivity), in.Gradient)
	return map[string]float64{"area": area, "width": area / float64(in.Depth)}, err
}

// cloggedBed gives the head lost in each zone of the U.S. EPA's, at one depth.
func cloggedBed(inputs []byte) (map[string]float64, error) {
	var in struct{ Flow, Length, Conductivity, Width, Depth amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	zones, err := hydraulics.EPAZones.Zones(float64(in.Length), float64(in.Conductivity))
	if err != nil {
		return nil, err
	}
	results := make(map[string]float64)
	for i, name := range []string{"initial", "final"} {
		loss, err := hydraulics.HeadLoss(float64(in.Flow), zones[i].Length, zones[i].Conductivity, float64(in.Width), float64(in.Depth))
		if err != nil {
			return nil, err
		}
		results[name] = loss
	}
	return results, nil
}
