package figures

import "greysill/checker/earthwork"

func (s *settling) lengthToWidth() Value {
	outline := s.drawnArea() // which shows that there is one
	return worked(s.lack("outline"), func() (float64, error) {
		long, short, ok := earthwork.Sheet(s.shape.Points(), 0, 0, 0)
		return inRange(long/short, ok)
	}, outline)
}

func (s *settling) sludgeShare() Value {
	room := s.sludgeRoom()
	return worked(s.lack("volume"), func() (float64, error) { return inRange(room.Number/s.volume.Number, s.volume.Number > 0) }, room, s.volume)
}

func (s *settling) roomFilled() Value {
	drawn, fills := s.entry("clean_out_interval", s.CleanOut), s.interval(fastest)
	return worked(s.lack("sludge_depth"), func() (float64, error) { return inRange(drawn.Number/fills.Number, fills.Number > 0) }, drawn, fills)
}

func (s *settling) reachable() Value {
	if s.Accessible == nil {
		return unknown(s.lack("accessible"))
	}
	return truth(*s.Accessible, s.drawn("accessible"))
}
