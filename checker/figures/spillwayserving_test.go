package figures_test

import "testing"

func spilling(spillway string) entries {
	return entries{"parts": `[
		{"id": "pond-1", "kind": "pond", "outline": [[20, 10], [28, 10], [28, 16], [20, 16]], "rim_level": "10 m", "overflow_to": "spillway-1"},
		{"id": "bed-1", "kind": "planted gravel bed", "outline": [[10, 10], [16, 10], [16, 13], [10, 13]], "rim_level": "10 m", "overflow_to": "overflow-1"},
		{"id": "spillway-1", "kind": "spillway", "path": [[28, 12], [28, 13]], "to": "sewer-1"` + spillway + `},
		{"id": "overflow-1", "kind": "overflow pipe", "path": [[10, 12], [5, 12]], "inverts": ["9.8 m", "9.6 m"], "to": "sewer-1"},
		{"id": "sewer-1", "kind": "sewer connection", "at": [5, 39]}
	]`}
}

func TestWhatASpillwayServes(t *testing.T) {
	f := compute(t, spilling(`, "crest_level": "9.7 m", "lining": "turf"`))
	requireKnown(t, f, "spillways", "spillway-1", map[string]any{"serves": "pond-1", "serves_pond": true, "head": 10 - 9.7, "below_rim": true})
	requireKnown(t, f, "spillway_channels", "spillway-1", map[string]any{"lining": "turf", "lining_stated": true})
	requireKnown(t, f, "spillways", "overflow-1", map[string]any{"serves": "bed-1", "serves_pond": false, "head": 10 - 9.8, "below_rim": true})
}

func TestACrestThatIsNotBelowTheRim(t *testing.T) {
	for level, below := range map[string]bool{"9.999 m": true, "10 m": false, "10.1 m": false} {
		requireKnown(t, compute(t, spilling(`, "crest_level": "`+level+`"`)), "spillways", "spillway-1", map[string]any{"below_rim": below})
	}
	f := compute(t, spilling(``))
	requireLacks(t, f, "spillways", "spillway-1", "below_rim", "/parts/2/crest_level")
	requireKnown(t, f, "spillway_channels", "spillway-1", map[string]any{"lining_stated": false})
	for _, none := range []string{"none", "Bare earth", " unlined", "no lining"} {
		f := compute(t, spilling(`, "crest_level": "9.7 m", "lining": "`+none+`"`))
		requireKnown(t, f, "spillway_channels", "spillway-1", map[string]any{"lining_stated": false})
	}
}
