package checker_test

import (
	"errors"
	"fmt"

	"greysill/checker/dispersal"
	"greysill/checker/earthwork"
	"greysill/checker/geometry"
	"greysill/checker/ground"
)

var (
	_ = register("volume between sections", volumeBetweenSections)
	_ = register("cutting", cutting)
	_ = register("basin volume", basinVolume)
	_ = register("excavation", excavation)
	_ = register("borrow pit", borrowPit)
	_ = register("ground between spot levels", groundBetween)
	_ = register("soil volume", soilVolume)
	_ = register("swell and shrinkage", swellAndShrinkage)
	_ = register("settlement of fill", settlementOfFill)
	_ = register("stone density", stoneDensity)
	_ = register("liner sheet", linerSheet)
	_ = register("area by texture", areaByTexture)
	_ = register("area by percolation", areaByPercolation)
	_ = register("area by rate", areaByRate)
	_ = register("South Dakota area", southDakotaArea)
	_ = register("Utah emitters", utahEmitters)
	_ = register("Utah mulch shields", utahShields)
	_ = register("mulch for a surge", mulchForSurge)
)

var errUndefined = errors.New("the formula does not hold for these inputs")

// defined turns the ok of a formula into an error.
func defined(ok bool) error {
	if !ok {
		return errUndefined
	}
	return nil
}

// bulks gives a volume in the units that sources use.
func bulks(volume float64) map[string]float64 {
	return map[string]float64{"m3": volume, "ft3": volume / si("1 ft3"), "yd3": volume / si("1 yd3")}
}

// extents gives an area in the units that sources use.
func extents(area float64) map[string]float64 {
	return map[string]float64{"m2": area, "ft2": area / si("1 ft2")}
}

// volumeBetweenSections takes two end areas and the one in the middle, 0 where the
// source has none.
func volumeBetweenSections(inputs []byte) (map[string]float64, error) {
	var in struct{ Length, First, Middle, Last amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	mean, okMean := earthwork.AverageEndArea(float64(in.Length), float64(in.First), float64(in.Last))
	prismoid, okPrismoid := earthwork.Prismoidal(float64(in.Length), float64(in.First), float64(in.Middle), float64(in.Last))
	results := map[string]float64{"prismoidal yd3": prismoid / si("1 yd3"), "prismoidal": prismoid}
	for unit, v := range bulks(mean) {
		results["average "+unit] = v
	}
	return results, defined(okMean && okPrismoid)
}

// cutting works out a cutting from its depths at equal intervals.
func cutting(inputs []byte) (map[string]float64, error) {
	var in struct {
		Base, Interval amount
		Run            float64
		Depths         []amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	section := earthwork.Trench{Width: float64(in.Base), Run: in.Run}
	results := map[string]float64{}
	mean, prismoid := 0.0, 0.0
	for i, d := range in.Depths {
		area, ok := section.Section(float64(d))
		if !ok {
			return nil, errUndefined
		}
		results[fmt.Sprintf("area %d", i+1)] = area / si("1 ft2")
		if i == 0 {
			continue
		}
		before, _ := section.Section(float64(in.Depths[i-1]))
		middle, _ := section.Section(float64(d+in.Depths[i-1]) / 2)
		results[fmt.Sprintf("middle %d", i)] = middle / si("1 ft2")
		byMean, okMean := earthwork.AverageEndArea(float64(in.Interval), before, area)
		exact, okExact := earthwork.Prismoidal(float64(in.Interval), before, middle, area)
		if !okMean || !okExact {
			return nil, errUndefined
		}
		mean, prismoid = mean+byMean, prismoid+exact
	}
	results["average ft3"], results["prismoidal ft3"] = mean/si("1 ft3"), prismoid/si("1 ft3")
	return results, nil
}

func basinVolume(inputs []byte) (map[string]float64, error) {
	var in struct {
		Length, Width, Depth amount // length and width at the floor
		Run                  float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	b, err := earthwork.NewBasin(rectangular(in.Length, in.Width), 0, in.Run, 0, float64(in.Depth))
	if err != nil {
		return nil, err
	}
	volume, okVolume := b.Volume(float64(in.Depth))
	results := bulks(volume)
	top, okTop := b.Area(float64(in.Depth))
	middle, okMiddle := b.Area(float64(in.Depth) / 2)
	results["top ft2"], results["middle ft2"] = top/si("1 ft2"), middle/si("1 ft2")
	return results, defined(okVolume && okTop && okMiddle)
}

// excavation digs the same under level ground.
func excavation(inputs []byte) (map[string]float64, error) {
	var in struct {
		Length, Width, Depth amount
		Run                  float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	far := float64(in.Length+in.Width) + 2*in.Run*float64(in.Depth)
	surface, err := ground.New([]ground.Spot{{X: -far, Y: -far}, {X: 2 * far, Y: -far}, {X: 2 * far, Y: 2 * far}, {X: -far, Y: 2 * far}})
	if err != nil {
		return nil, err
	}
	dug, err := earthwork.Excavation(earthwork.Shape{
		Outline: rectangular(in.Length, in.Width), Levels: []float64{-float64(in.Depth)}, Run: in.Run,
	}, surface)
	return bulks(dug.Volume), err
}

func rectangular(length, width amount) []geometry.Point {
	l, w := float64(length), float64(width)
	return []geometry.Point{{X: 0, Y: 0}, {X: l, Y: 0}, {X: l, Y: w}, {X: 0, Y: w}}
}

// borrowPit gives the cut down to a grade, negative where it is fill.
func borrowPit(inputs []byte) (map[string]float64, error) {
	var in struct {
		Cell, Grade amount
		Levels      [][]amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	rows := make([][]float64, len(in.Levels))
	for i, row := range in.Levels {
		for _, level := range row {
			rows[i] = append(rows[i], float64(level-in.Grade))
		}
	}
	volume, ok := earthwork.Grid(float64(in.Cell), rows)
	results := bulks(volume)
	results["mean ft"] = volume / float64(in.Cell) / si("1 ft")
	return results, defined(ok)
}

// groundBetween gives the level at a share of the way between two spot levels.
func groundBetween(inputs []byte) (map[string]float64, error) {
	var in struct{ From, To, Share float64 }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	surface, err := ground.New([]ground.Spot{{Z: in.From}, {X: 40, Z: in.To}, {X: 20, Y: 30, Z: in.From}})
	if err != nil {
		return nil, err
	}
	level, ok := surface.Level(geometry.Point{X: 40 * in.Share})
	return map[string]float64{"level": level}, defined(ok)
}

func soilVolume(inputs []byte) (map[string]float64, error) {
	var in struct {
		Soil, From, To string
		Volume         float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	states := map[string]earthwork.State{"bank": earthwork.Bank, "loose": earthwork.Loose, "compacted": earthwork.Compacted}
	for _, soil := range []earthwork.Soil{earthwork.Clay, earthwork.CommonEarth, earthwork.BlastedRock, earthwork.Sand} {
		if soil.Name == in.Soil {
			volume, ok := soil.Convert(in.Volume, states[in.From], states[in.To])
			return map[string]float64{"volume": volume}, defined(ok)
		}
	}
	return nil, fmt.Errorf("no soil named %q", in.Soil)
}

func swellAndShrinkage(inputs []byte) (map[string]float64, error) {
	var in struct {
		BankDensity  amount `json:"bank_density"`
		LooseDensity amount `json:"loose_density"`
		Mass, Placed amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	swell, okSwell := earthwork.Swell(float64(in.BankDensity), float64(in.LooseDensity))
	bank := float64(in.Mass / in.BankDensity)
	factor, okFactor := earthwork.Shrinkage(bank, float64(in.Placed))
	return map[string]float64{
		"swell": swell, "load factor": 1 / (1 + swell), "shrinkage": factor,
		"bank yd3": bank / si("1 yd3"), "loose yd3": bank * (1 + swell) / si("1 yd3"),
		"hauled of 100": 100 * (1 + swell), "placed of 100": 100 * factor,
	}, defined(okSwell && okFactor)
}

func settlementOfFill(inputs []byte) (map[string]float64, error) {
	var in struct {
		Depth  amount
		Shrink float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	settlement, ok := earthwork.Settlement(float64(in.Depth), in.Shrink)
	return lengths(settlement), defined(ok)
}

// stoneDensity gives the mass of a unit of stone.
func stoneDensity(inputs []byte) (map[string]float64, error) {
	var in struct{ Stone string }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	for _, stone := range []earthwork.Aggregate{earthwork.No57Stone, earthwork.No4Stone} {
		if stone.Name == in.Stone {
			metre, okMetre := earthwork.Mass(1, stone.Density)
			yard, okYard := earthwork.Mass(si("1 yd3"), stone.Density)
			return map[string]float64{"t/m3": metre / 1000, "short ton/yd3": yard / si("2000 lb")}, defined(okMetre && okYard)
		}
	}
	return nil, fmt.Errorf("no stone named %q", in.Stone)
}

func linerSheet(inputs []byte) (map[string]float64, error) {
	var in struct {
		Length, Width, Depth, Overlap amount // at the rim
		Run                           float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	length, width, ok := earthwork.Sheet(rectangular(in.Length, in.Width), float64(in.Depth), in.Run, float64(in.Overlap))
	return map[string]float64{
		"length ft": length / si("1 ft"), "width ft": width / si("1 ft"), "ft2": length * width / si("1 ft2"),
	}, defined(ok)
}

// loadingArea gives the rate and the area that a flow wants at it.
func loadingArea(flow amount, rate float64, ok bool) (map[string]float64, error) {
	if !ok {
		return nil, errUndefined
	}
	area, ok := dispersal.Area(float64(flow), rate)
	results := extents(area)
	results["gal/d/ft2"] = rate / si("1 gal/d") * si("1 ft2")
	return results, defined(ok)
}

// areaByTexture looks a soil up by a texture and makes sure of the row's name.
func areaByTexture(inputs []byte) (map[string]float64, error) {
	var in struct {
		Table, Texture, Soil string
		Flow                 amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	for _, table := range dispersal.TextureTables {
		if table.Name != in.Table {
			continue
		}
		row, _, ok := table.Rate(in.Texture)
		if row.Soil != in.Soil {
			return nil, fmt.Errorf("%s has the row %q for %s", in.Table, row.Soil, in.Texture)
		}
		return loadingArea(in.Flow, row.Rate, ok)
	}
	return nil, fmt.Errorf("no table named %q", in.Table)
}

func areaByPercolation(inputs []byte) (map[string]float64, error) {
	var in struct {
		Table             string
		Percolation, Flow amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	for _, table := range dispersal.PercolationTables {
		if table.Name == in.Table {
			rate, ok := table.Rate(float64(in.Percolation))
			return loadingArea(in.Flow, rate, ok)
		}
	}
	return nil, fmt.Errorf("no table named %q", in.Table)
}

// areaByRate takes a rate in gallons a day on a square foot.
func areaByRate(inputs []byte) (map[string]float64, error) {
	var in struct {
		Rate float64
		Flow amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	return loadingArea(in.Flow, in.Rate*si("1 gal/d")/si("1 ft2"), true)
}

func southDakotaArea(inputs []byte) (map[string]float64, error) {
	var in struct{ Flow, Percolation amount }
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	area, ok := dispersal.SouthDakotaArea(float64(in.Flow), float64(in.Percolation))
	return extents(area), defined(ok)
}

func utahEmitters(inputs []byte) (map[string]float64, error) {
	var in struct {
		Soil string
		Flow amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	number, discharge, ok := dispersal.UtahEmitters(in.Soil, float64(in.Flow))
	return map[string]float64{"emitters": float64(number), "gal/d each": discharge / si("1 gal/d")}, defined(ok)
}

func utahShields(inputs []byte) (map[string]float64, error) {
	var in struct {
		Soil string
		Flow amount
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	number, ok := dispersal.UtahShields(in.Soil, float64(in.Flow))
	return map[string]float64{"shields": float64(number)}, defined(ok)
}

func mulchForSurge(inputs []byte) (map[string]float64, error) {
	var in struct {
		Surge    amount
		Porosity float64
	}
	if err := strict(inputs, &in); err != nil {
		return nil, err
	}
	volume, ok := dispersal.MulchWanted(float64(in.Surge), in.Porosity)
	return bulks(volume), defined(ok)
}
