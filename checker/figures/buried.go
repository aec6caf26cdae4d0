package figures

import "greysill/checker/quantity"

var serviceTable = tabulate(
	List{Name: "services", Doc: "Every buried service.", Subject: "a buried service"},
	func(d *drawing) []service { return d.buried() }, service.subject,
	[]column[service]{
		{Field{Name: "kind", Kind: Text, Doc: "What it carries.", Words: serviceKinds},
			func(s service) Value { return text(s.Kind) }},
		{Field{Name: "located", Kind: Truth, Doc: "Whether it was found on the ground and marked."}, func(s service) Value { return s.yesNo("located", s.Located) }},
		{Field{Name: "private", Kind: Truth, Doc: "Whether it is the owner's own line, which the utilities do not mark."},
			func(s service) Value { return s.yesNo("private", s.Private) }},
		{Field{Name: "cover", Kind: Number, Dimension: quantity.Length, Doc: "Depth of ground over its top, as drawn."}, func(s service) Value { return s.depth() }},
		{Field{Name: "wiring", Kind: Text,
			Doc:   "How a wire is laid, which its least cover hangs on; \"low voltage\" of a low-voltage wire however it is laid, \"none\" of what is no wire.",
			Words: []string{directBurial, plasticConduit, metalConduit, faultProtected, lowVoltage, none}}, service.wiring},
	},
)

// The kinds of buried service that figures tell apart.
const (
	lineVoltage = "line voltage"
	lowVoltage  = "low voltage"
	gas         = "gas"
	sewer       = "sewer"
)

var serviceKinds = []string{lineVoltage, lowVoltage, gas, "water", "telecom", sewer, "irrigation"}

// The ways in which line-voltage wires are laid.
const (
	directBurial   = "direct burial cable"
	plasticConduit = "PVC conduit"
	metalConduit   = "metal conduit"
	faultProtected = "GFCI-protected cable"
)

func (s service) subject() Subject { return Subject{s.ID, []string{s.ID}, []string{s.Pointer}} }

func (s service) yesNo(entry string, given *bool) Value {
	if given == nil {
		return unknown(Lack{s.Pointer + "/" + entry, entry + " of " + s.ID})
	}
	return truth(*given, s.drawn(entry))
}

func (s service) wiring() Value {
	switch {
	case s.Kind == lowVoltage:
		return text(lowVoltage)
	case s.Kind != lineVoltage:
		return text(none)
	}
	switch s.WiringMethod {
	case directBurial, plasticConduit, metalConduit, faultProtected:
		return text(s.WiringMethod, s.drawn("wiring_method"))
	default:
		return unknown(Lack{s.Pointer + "/wiring_method", "wiring_method of " + s.ID + " for line voltage"})
	}
}
