package design

import "greysill/checker/source"

// Position gives the place in the file of the value that an RFC 6901 pointer
// leads to, or of the nearest value round it.
func (d *Design) Position(pointer string) source.Position { return d.Document.Position(pointer) }

// Part gives the part of an id, nil when there is none.
func (d *Design) Part(id string) *Part {
	for i := range d.Parts {
		if d.Parts[i].ID == id {
			return &d.Parts[i]
		}
	}
	return nil
}

// Feature gives the feature of an id, nil when there is none.
func (d *Design) Feature(id string) *Feature {
	for i := range d.Site.Features {
		if d.Site.Features[i].ID == id {
			return &d.Site.Features[i]
		}
	}
	return nil
}

// Outlets gives every way that water takes out of the part, in any season.
func (p *Part) Outlets() []Outlet {
	outlets := append([]Outlet(nil), p.To...)
	outlets = append(outlets, p.BypassTo...)
	return append(outlets, p.OverflowTo...)
}
