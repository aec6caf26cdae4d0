package drawing

import (
	"github.com/rivo/uniseg"

	"greysill/checker/source"
)

// The heights of lettering, in millimetres.
const (
	lettering      = 2.3
	smallLettering = 1.9
)

// widths are the widths of a plain sans-serif face's letters in thousandths of
// its height (from memory); text is fitted to them, so that they need not be
// exact.
var widths = letterWidths()

func letterWidths() map[string]float64 {
	all := map[string]float64{}
	for letters, width := range map[string]float64{
		"ijl'|": 222, " .,:;/!ftI()[]°·": 300, "r-": 333, "\"*": 355, "ckvsxyzJ": 500, "abdeghnopquL_0123456789?$": 556, "+<>=~×÷": 584,
		"FTZ": 611, "ABEKPSVXY&": 667, "wCDHNRU": 722, "GOQ": 778, "mM": 833, "%": 889, "W": 944, "@→½¼¾": 1000,
	} {
		for _, letter := range letters {
			all[string(letter)] = width
		}
	}
	return all
}

// textWidth is how wide a line of lettering of a height is.
func textWidth(text string, height float64) float64 {
	sum, state := 0.0, -1
	for text = source.Clean(text); text != ""; {
		var cluster string
		var columns int
		cluster, text, columns, state = uniseg.FirstGraphemeClusterInString(text, state)
		if w, known := widths[cluster]; known {
			sum += w
		} else {
			sum += 600 * float64(max(columns, 1))
		}
	}
	return sum / 1000 * height
}

// cut shortens a text to a width, so that no name breaks a drawing.
func cut(text string, height, width float64) string {
	if textWidth(text, height) <= width {
		return text
	}
	short, state := "", -1
	for text = source.Clean(text); text != ""; {
		var cluster string
		cluster, text, _, state = uniseg.FirstGraphemeClusterInString(text, state)
		if textWidth(short+cluster+"…", height) > width {
			break
		}
		short += cluster
	}
	return short + "…"
}
