package figures

import (
	"slices"

	"greysill/checker/dispersal"
)

var (
	utahTables  = Citation{Title: dispersal.UtahTrench.Source + "; " + dispersal.UtahMulch.Source, Standing: Standing(dispersal.UtahMulch.Standing)}
	utahShields = Citation{Title: dispersal.UtahShieldsSource, Standing: Published}
)

// byUtah gives the part by the one of Utah's tables that is for its kind.
func (s *soakage) byUtah() *soilArea {
	name := dispersal.UtahMulch.Name
	if s.Kind == trench {
		name = dispersal.UtahTrench.Name
	}
	return s.areas[slices.IndexFunc(s.areas, func(a *soilArea) bool { return a.table.name == name })]
}

func (s *soakage) outlets() Value {
	if s.OutletsCount == 0 {
		return unknown(s.lack("outlets"))
	}
	return number(float64(s.OutletsCount), s.drawn("outlets"))
}

func (s *soakage) outletsByUtah() Value {
	if s.Kind == trench {
		return unknown(Lack{s.Pointer + "/kind", "a mulch basin in place of " + s.ID})
	}
	soil := s.byUtah().soil
	return worked(soilEntry("texture"), func() (float64, error) {
		n, ok := dispersal.UtahShields(soil.Text, s.flow.Number)
		return inRange(float64(n), ok)
	}, soil, s.flow)
}

func (s *soakage) outletRatio() Value {
	outlets, wanted := s.outlets(), s.outletsByUtah()
	if wanted.Known() && wanted.Number == 0 {
		return unknown(s.noWater("greywater"))
	}
	return outOf(outlets.Number/wanted.Number, outlets, wanted)
}
