package rulebook

import (
	"cmp"
	"slices"
	"strings"
)

// topics lists the topics of rules in the order in which rules are listed,
// judged and reported: first what can make somebody ill or flood a neighbour,
// last what is a matter of who may draw the plans. Other topics follow by name.
var topics = []string{"sources", "exposure", "overflow", "clearances", "diversion", "services", "site", "bed", "drains", "flow", "construction", "records"}

// inOrder compares two ids of rules by topic, and within a topic by name.
func inOrder(a, b string) int {
	return cmp.Or(cmp.Compare(rank(a), rank(b)), cmp.Compare(a, b))
}

func rank(id string) int {
	topic, _, _ := strings.Cut(id, "/")
	if i := slices.Index(topics, topic); i >= 0 {
		return i
	}
	return len(topics)
}
