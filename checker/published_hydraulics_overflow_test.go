package checker_test

import (
	"fmt"
	"math"

	"greysill/checker/hydraulics"
)

// weir is a weir by one of the formulas. A flow is at the source's own gravity:
// it goes with the root of it.
type weir struct {
	Formula       string
	Cd            float64
	Coefficient   float64
	Length, Head  amount
	Crest         amount // height above the bed
	Degrees       float64
	Contractions  int
	Flow          amount
	Gravity       float64
	ApproachArea  amount `json:"approach_area"`
	KeepsApproach bool   `json:"keeps_approach"` // the formula doesn't take the approach's own share off again
}

func readWeir(inputs []byte) (weir, error) {
	var w weir
	err := strict(inputs, &w)
	return w, err
}

// gravity is the factor of a flow at the source's gravity.
func (w weir) gravity() float64 {
	if w.Gravity == 0 {
		return 1
	}
	return math.Sqrt(w.Gravity / hydraulics.Gravity)
}

// over is the flow at a head, at the source's gravity.
func (w weir) over(head float64) (float64, error) {
	q, err := w.standard(head)
	return q * w.gravity(), err
}

func (w weir) standard(head float64) (float64, error) {
	length := float64(w.Length)
	switch w.Formula {
	case "ideal":
		return hydraulics.RectangularWeir(w.Cd, length, head)
	case "coefficient":
		return hydraulics.Weir(w.Coefficient, length, head)
	case "cubic feet a minute by feet and inches":
		inches := math.Pow(si("1 in"), 1.5)
		return hydraulics.Weir(w.Coefficient*si("1 cfs")/60/si("1 ft")/inches, length, head)
	case "broad crest":
		return hydraulics.Weir(w.Cd*hydraulics.BroadCrest, length, head)
	case "Francis US":
		return hydraulics.FrancisWeir(hydraulics.FrancisUS, length, head, w.Contractions)
	case "Francis SI":
		return hydraulics.FrancisWeir(hydraulics.FrancisSI, length, head, w.Contractions)
	case "Francis of Cd":
		return hydraulics.FrancisWeir(2.0/3*w.Cd*math.Sqrt(2*hydraulics.Gravity), length, head, w.Contractions)
	case "Rehbock":
		cd, err := hydraulics.RehbockCd(head, float64(w.Crest))
		if err != nil {
			return 0, err
		}
		return hydraulics.RectangularWeir(cd, length, head)
	case "Rehbock effective head":
		return hydraulics.RehbockWeir(length, head, float64(w.Crest))
	case "Bazin":
		cd, err := hydraulics.BazinCd(head)
		if err != nil {
			return 0, err
		}
		return hydraulics.RectangularWeir(cd, length, head)
	case "V":
		return hydraulics.VNotch(w.Cd, w.Degrees*math.Pi/180, head)
	case "rated V":
		ratings := map[float64]hydraulics.NotchRating{45: hydraulics.Notch45, 60: hydraulics.Notch60, 90: hydraulics.ThomsonNotch90}
		return ratings[w.Degrees].Flow(head)
	}
	return 0, fmt.Errorf("no weir formula %q", w.Formula)
}

// weirFlow gives the flow over a weir, with one pass for the head of the
// approaching water where the source has it.
func weirFlow(inputs []byte) (map[string]float64, error) {
	w, err := readWeir(inputs)
	if err != nil {
		return nil, err
	}
	q, err := w.over(float64(w.Head))
	if err != nil || w.ApproachArea == 0 {
		return flows(q), err
	}
	gained, err := hydraulics.VelocityHead(q / w.gravity() / float64(w.ApproachArea))
	if err != nil {
		return nil, err
	}
	q, err = w.over(float64(w.Head) + gained)
	if err != nil || w.KeepsApproach {
		return flows(q), err
	}
	own, err := w.over(gained)
	return flows(q - own), err
}

func weirHead(inputs []byte) (map[string]float64, error) {
	w, err := readWeir(inputs)
	if err != nil {
		return nil, err
	}
	head, err := hydraulics.HeadFor(float64(w.Flow), 10, w.over)
	return lengths(head), err
}

func weirLength(inputs []byte) (map[string]float64, error) {
	w, err := readWeir(inputs)
	if err != nil {
		return nil, err
	}
	length, err := hydraulics.HeadFor(float64(w.Flow), 1000, func(length float64) (float64, error) {
		w.Length = amount(length)
		return w.over(float64(w.Head))
	})
	return lengths(length), err
}

func doubleNotch(inputs []byte) (map[string]float64, error) {
	w, err := readWeir(inputs)
	if err != nil {
		return nil, err
	}
	head, err := hydraulics.HeadFor(float64(w.Flow), 10, func(head float64) (float64, error) {
		w.Length = amount(2 * head)
		return w.over(head)
	})
	return lengths(2 * head), err
}

// notchAngle gives the angle of a V-notch with a flow at a head, and the width
// of the water at another flow through it.
func notchAngle(inputs []byte) (map[string]float64, error) {
	var in struct {
		weir
		Later amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	w := in.weir
	w.Degrees = 90
	square, err := w.over(float64(w.Head))
	if err != nil {
		return nil, err
	}
	w.Degrees = 2 * math.Atan(float64(w.Flow)/square) * 180 / math.Pi
	results := map[string]float64{"degrees": w.Degrees}
	if in.Later > 0 {
		head, err := hydraulics.HeadFor(float64(in.Later), 10, w.over)
		results["width"] = 2 * head * math.Tan(w.Degrees*math.Pi/360)
		return results, err
	}
	return results, nil
}

func broadCrest(inputs []byte) (map[string]float64, error) {
	var none struct{}
	err := strict(inputs, &none)
	return map[string]float64{"m and s": hydraulics.BroadCrest, "ft and s": hydraulics.BroadCrest / math.Sqrt(si("1 ft"))}, err
}

func orifice(inputs []byte) (map[string]float64, error) {
	var in struct {
		Diameter, Head, Loss amount
		Contraction, Gravity float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	area, err := hydraulics.CircleArea(float64(in.Diameter))
	if err != nil {
		return nil, err
	}
	cd := in.Contraction * math.Sqrt(float64((in.Head-in.Loss)/in.Head))
	q, err := hydraulics.Orifice(cd, area, float64(in.Head))
	return flows(q * math.Sqrt(in.Gravity/hydraulics.Gravity)), err
}

func drainTime(inputs []byte) (map[string]float64, error) {
	var in struct {
		Area, Opening, From, To amount
		Cd, Gravity             float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	t, err := hydraulics.DrainTime(float64(in.Area), in.Cd, float64(in.Opening), float64(in.From), float64(in.To))
	return map[string]float64{"s": t * math.Sqrt(hydraulics.Gravity/in.Gravity)}, err
}

// drainOrifices gives the diameter of each of several orifices that drain a tank
// in a time, which goes with the inverse of their area.
func drainOrifices(inputs []byte) (map[string]float64, error) {
	var in struct {
		Area, From, To, Time amount
		Count, Cd, Gravity   float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	metre, err := hydraulics.CircleArea(1)
	if err != nil {
		return nil, err
	}
	t, err := hydraulics.DrainTime(float64(in.Area), in.Cd, in.Count*metre, float64(in.From), float64(in.To))
	return lengths(math.Sqrt(t * math.Sqrt(hydraulics.Gravity/in.Gravity) / float64(in.Time))), err
}

func rationalMethod(inputs []byte) (map[string]float64, error) {
	var in struct {
		Coefficient     float64
		Intensity, Area amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	q, err := hydraulics.RationalPeak(in.Coefficient, float64(in.Intensity), float64(in.Area))
	return flows(q), err
}

func modifiedRational(inputs []byte) (map[string]float64, error) {
	var in struct {
		Coefficient                              float64
		Intensity, Area, Duration, Concentration amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	storm := hydraulics.Storm{Coefficient: in.Coefficient, Intensity: float64(in.Intensity), Area: float64(in.Area),
		Duration: float64(in.Duration), Concentration: float64(in.Concentration)}
	q, err := storm.Peak()
	return flows(q), err
}

func runoffVolume(inputs []byte) (map[string]float64, error) {
	var in struct {
		Coefficient float64
		Rain, Area  amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	v, err := hydraulics.RunoffVolume(in.Coefficient, float64(in.Rain), float64(in.Area))
	return map[string]float64{"m3": v, "ft3": v / si("1 ft3")}, err
}

func runoffDepth(inputs []byte) (map[string]float64, error) {
	var in struct {
		CurveNumber float64 `json:"curve_number"`
		Rain        amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	depth, err := hydraulics.RunoffDepth(in.CurveNumber, hydraulics.UsualAbstraction, float64(in.Rain))
	if err != nil {
		return nil, err
	}
	retention, err := hydraulics.PotentialRetention(in.CurveNumber)
	results := lengths(depth)
	results["Ia/P"] = hydraulics.UsualAbstraction * retention / float64(in.Rain)
	return results, err
}

// stormRisk gives the risk, or the return period that has the risk.
func stormRisk(inputs []byte) (map[string]float64, error) {
	var in struct {
		ReturnPeriod float64 `json:"return_period"`
		Years, Risk  float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	if in.ReturnPeriod > 0 {
		risk, err := hydraulics.Risk(in.ReturnPeriod, in.Years)
		return map[string]float64{"risk": risk, "%": 100 * risk}, err
	}
	period, err := hydraulics.HeadFor(1-in.Risk, 1000, func(period float64) (float64, error) {
		risk, err := hydraulics.Risk(period, in.Years)
		return 1 - risk, err
	})
	return map[string]float64{"years": period}, err
}

func roofFlow(inputs []byte) (map[string]float64, error) {
	var in struct{ Area, Intensity amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	q, err := hydraulics.RoofFlow(float64(in.Area), 0, hydraulics.IPCWallShare, float64(in.Intensity))
	return flows(q), err
}

// leader gives a leader's flow, and the roof that yields as much at an inch an
// hour.
func leader(inputs []byte) (map[string]float64, error) {
	var in struct {
		Diameter amount
		Share    [2]float64 // numerator and denominator
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	q, err := hydraulics.LeaderFlow(float64(in.Diameter), in.Share[0]/in.Share[1])
	results := flows(q)
	results["ft2"] = q / si("1 in/h") / si("1 ft2")
	return results, err
}
