package treatment

import (
	"slices"
	"strings"
)

// RootDepth is how deep the roots of a plant reached in a wet gravel bed.
type RootDepth struct {
	Plant   string
	Depth   float64 // m
	AtLeast bool    // whether the source only says that they reach so deep
	Origin
}

// RootDepths lists what sources say: they differ, for reed from 0.46 m to more
// than 0.6 m.
var RootDepths = []RootDepth{
	{"bulrush", 2 * foot, false, crites2006Roots},
	{"reed", 1.5 * foot, false, Origin{crites2006Roots.Source + "; it prints 0.4 m beside 1.5 ft", Published}},
	{"cattail", 1 * foot, false, crites2006Roots},
	{"bulrush", 0.76, false, epa1988Roots},
	{"reed", 0.60, true, epa1988Roots},
	{"cattail", 0.30, false, epa1988Roots},
	{"reed", 0.50, true, Origin{"Aylward et al., pilot bed of 4–8 mm gravel, abstract: the bed's bottom within 18 months", Published}},
}

var (
	crites2006Roots = Origin{"Crites, Middlebrooks & Reed, Natural Wastewater Treatment Systems (2006), ch. 7, plants", Published}
	epa1988Roots    = Origin{"EPA/625/1-88/022 (September 1988), after Gersberg 1986", FromMemory}
)

// names has the botanical genera, and the common names in America, of the plants
// of RootDepths. A giant reed, a bur reed and reed canary grass are other plants.
var names = map[string]struct{ genera, common []string }{
	"bulrush": {[]string{"scirpus", "schoenoplectus"}, []string{"bulrush", "softstem bulrush", "hardstem bulrush", "three-square bulrush"}},
	"reed":    {[]string{"phragmites"}, []string{"reed", "common reed"}},
	"cattail": {[]string{"typha"}, []string{"cattail", "common cattail", "broadleaf cattail", "narrowleaf cattail"}},
}

// RootDepthsOf gives what is known of a plant by its botanical or common name, as
// "Typha latifolia" or "common reed"; nothing for a plant that no source here
// covers.
func RootDepthsOf(name string) []RootDepth {
	name = strings.ToLower(strings.Join(strings.Fields(name), " "))
	genus, _, _ := strings.Cut(name, " ")
	var known []RootDepth
	for _, r := range RootDepths {
		if n := names[r.Plant]; slices.Contains(n.genera, genus) || slices.Contains(n.common, name) {
			known = append(known, r)
		}
	}
	return known
}
